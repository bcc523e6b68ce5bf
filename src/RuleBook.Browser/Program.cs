// The page calls Evaluator; there is nothing to run.
return;
