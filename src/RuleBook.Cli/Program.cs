using RuleBook.Cli;

return await CommandLine.RunAsync(args, Surroundings.OfTheProcess());
