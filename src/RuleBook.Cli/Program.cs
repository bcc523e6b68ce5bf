using RuleBook.Cli;
using RuleBook.Cli.Commands;

using var ending = new Ending();
int code;
try
{
    code = await CommandLine.RunAsync(args, Surroundings.OfTheProcess(ending.Stop));
}
catch (DirectoryNotFoundException)
{
    Console.Error.WriteLine("error: the folder that the command was started in is gone");
    code = ExitCode.BadInput;
}

return ending.Code ?? code;
