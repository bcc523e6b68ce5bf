using RuleBook.Cli;
using RuleBook.Cli.Commands;

return await CommandLine.RunAsync(args, Surroundings.OfTheProcess());
