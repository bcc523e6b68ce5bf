// How long the site takes to make, and the check page to become usable: measured from outside, on the published command, beside what was
// promised.
using RuleBook.Benchmarks;

const int Visits = 5;
const int Builds = 3;
var ofPages = args is ["pages", ..];
var command = args.Skip(ofPages ? 1 : 0).FirstOrDefault("src/RuleBook.Cli/bin/Release/net10.0/RuleBook.Cli.dll");
if (!File.Exists(command))
{
    Console.Error.WriteLine($"{command} is not there: dotnet build src/RuleBook.Cli -c Release, and run this from the repository's folder");
    return 2;
}

var folder = Directory.CreateTempSubdirectory("rulebook-benchmark-").FullName;
try
{
    if (ofPages)
    {
        await using var pages = await Command.ServeAsync(command, folder);
        await PageFigures.WriteAsync(Path.Combine(folder, "site"), Command.Port, Console.Out);
        return 0;
    }

    var builds = new List<TimeSpan>();
    for (var i = 0; i < Builds; i++)
        builds.Add(await Command.BuildAsync(command, folder));
    await using var serving = await Command.ServeAsync(command, folder);
    var (first, again) = await CheckPage.VisitAsync(serving.Root, Visits);
    return new Table(
        new("site of the whole book, process and all", builds, TimeSpan.FromSeconds(5)),
        new("check page usable, first visit", first, TimeSpan.FromSeconds(2)),
        new("check page usable, seen before", again, TimeSpan.FromSeconds(2))
    ).Write(Console.Out);
}
finally
{
    Directory.Delete(folder, recursive: true);
}
