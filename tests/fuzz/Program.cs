// dotnet run -c Release --project tests/fuzz -- SECONDS [--workers N] [--seed N] [--only KIND]
//
// Throws mutated inputs of every kind at the entry points of the command and the page. An input is a finding when it ends in anything but
// an answer or an explained refusal, takes more than 2 s of processor time, or gives two different outcomes in two runs; more than 500 MB
// ends the process. A finding is kept in tests/fuzz/found; once mended it moves to tests/fuzz/seeds/KIND, which every run tries first.
using System.Globalization;
using RuleBook.Fuzz;

var seconds = args.Length > 0 && int.TryParse(args[0], NumberStyles.None, CultureInfo.InvariantCulture, out var given) ? given : 60;
var seed = Array.IndexOf(args, "--seed") is var at and >= 0 ? int.Parse(args[at + 1], CultureInfo.InvariantCulture) : Environment.TickCount;
var only = Array.IndexOf(args, "--only") is var chosen and >= 0 ? args[chosen + 1] : null;

if (Array.IndexOf(args, "--workers") is var several and >= 0)
    return await Workers.RunAsync(int.Parse(args[several + 1], CultureInfo.InvariantCulture), seconds, seed).ConfigureAwait(false);

var repository = new DirectoryInfo(AppContext.BaseDirectory);
while (!File.Exists(Path.Combine(repository.FullName, "RuleBook.sln")))
    repository = repository.Parent!;
if (args is ["--guided", var guided])
{
    Guided.Run(repository.FullName, guided);
    return 0;
}

if (args is ["--seeds", var seeded, var into])
{
    Guided.Seeds(repository.FullName, seeded, into);
    return 0;
}

var corpus = new Corpus(repository.FullName);
var campaign = new Campaign(corpus, [.. Targets.Of(corpus).Where(target => only is null || target.Kind == only)], seed);
Console.WriteLine($"seed {seed}, {seconds} s");
campaign.Kept();
campaign.Run(TimeSpan.FromSeconds(seconds));
if (args.Contains("--tallies"))
    foreach (var tally in campaign.Tallies)
        Console.WriteLine(tally.Line);
else
    Console.Write(Tally.Table(campaign.Tallies, campaign.Findings));
return campaign.Findings == 0 ? 0 : 1;
