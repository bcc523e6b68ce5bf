using System.Collections.Immutable;
using System.CommandLine;
using RuleBook.Authoring.Books;
using RuleBook.Authoring.Gaps;
using RuleBook.Authoring.Inspecting;
using RuleBook.Law;
using RuleBook.Site;
using RuleBook.Site.Building;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Cli.Commands;

/// <summary><c>rulebook site OUT</c>: renders the comparison site; <c>--preview</c> serves it on loopback.</summary>
internal static class SiteCommand
{
    public static Command Build(Surroundings surroundings)
    {
        var folder = new Argument<string>("OUT") { Description = "The folder to write; a site that is there is replaced whole" };
        var check = new Option<string?>("--check-page")
        {
            HelpName = "FOLDER",
            Description = "The published evaluator of the check page (default: beside the command, or what publishing it left)",
        };
        var report = new Option<string?>("--report-to")
        {
            HelpName = "URL",
            Description = "Start of the http(s) address of a new issue, to which a correction report is appended",
        };
        var mail = new Option<string?>("--report-mail")
        {
            HelpName = "ADDRESS",
            Description = "A mail address that takes correction reports",
        };
        var since = new Option<string?>("--since")
        {
            HelpName = "BOOK",
            Description = "An earlier edition (a folder or git revision): the page of changes then tells which answers change",
        };
        var address = new Option<string?>("--address")
        {
            HelpName = "URL",
            Description = "The http(s) address where the site will be: for sitemap.xml and the pictures of link previews",
        };
        var compress = new Option<string>("--compress")
        {
            Description = "The .br and .gz beside each file: fast, smallest (takes minutes), or no such files",
            DefaultValueFactory = _ => "fast",
        }.AcceptOnlyFromAmong("fast", "smallest", "no");
        var preview = new Option<bool>("--preview") { Description = "Serve the site on loopback until interrupted" };
        var port = new Option<int>("--port") { Description = "Port of the preview", DefaultValueFactory = _ => 8321 };
        var (book, on) = (Choices.Book(), Choices.On());
        var command = new Command("site", "Render the comparison site")
        {
            folder,
            book,
            on,
            since,
            check,
            report,
            mail,
            address,
            compress,
            preview,
            port,
        };
        command.SetAction(
            async (parsed, stop) =>
            {
                var target = Paths.Given("OUT", parsed.GetValue(folder))!;
                var source = Inputs.BookFolder(parsed.GetValue(book), surroundings);
                RefuseInside(source, target);
                // What was typed is looked at before the book is read.
                var (day, where) = (Choices.Day("--on", parsed.GetValue(on)), Address(parsed.GetValue(address)));
                var evaluator = Paths.Given("--check-page", parsed.GetValue(check));
                var bundle = Bundle(evaluator, surroundings.Folder);
                var input = Read(source, day) with
                {
                    Check = bundle,
                    ReportTo = parsed.GetValue(report),
                    ReportMail = parsed.GetValue(mail),
                    Address = where,
                };
                if (parsed.GetValue(since) is { } earlier)
                    input = input with
                    {
                        Since = EarlierEdition.Of(
                            earlier,
                            source,
                            input.Book,
                            (old, now) => ChangesCommand.Between(old, now, surroundings.Console)
                        ),
                    };
                var files = SiteBuild.Render(input);
                if (parsed.GetValue(compress) is not "no" and var effort)
                    files = CompressedFiles.Beside(
                        files,
                        effort == "fast" ? Effort.Fast : Effort.Smallest,
                        Packed(evaluator, surroundings.Folder)
                    );
                SiteFolder.Write(files, target, surroundings.Stop);
                await surroundings
                    .Out.WriteLineAsync($"{target}: {files.Length} files, {files.Sum(file => (long)file.Content.Length) / 1024} KiB")
                    .ConfigureAwait(false);
                if (input.Check.IsEmpty)
                    await surroundings
                        .Error.WriteLineAsync(
                            "without the check page: run dotnet publish src/RuleBook.Browser -c Release first, or name its folder "
                                + "with --check-page"
                        )
                        .ConfigureAwait(false);
                if (parsed.GetValue(preview))
                    await Preview.ServeAsync(target, parsed.GetValue(port), surroundings.Out, stop).ConfigureAwait(false);
                return ExitCode.Permitted;
            }
        );
        return command;
    }

    /// <summary>As a folder, so that paths are appended to it.</summary>
    /// <exception cref="InputException">It is no http(s) address of a folder.</exception>
    private static Uri? Address(string? given)
    {
        if (given is null)
            return null;
        var isWeb =
            Uri.TryCreate(given.EndsWith('/') ? given : $"{given}/", UriKind.Absolute, out var address)
            && address.Scheme is "http" or "https";
        return isWeb && address is { Query: "", Fragment: "", UserInfo: "" }
            ? address
            : throw new InputException(
                Problem.Error(
                    "no-address",
                    new Mark("--address", 1, 1),
                    $"'{given}' is not the http(s) address of a folder",
                    "such as https://limits.example/book/"
                )
            );
    }

    /// <summary>A site inside the data would be read as part of the book.</summary>
    private static void RefuseInside(string book, string target)
    {
        var there = Path.TrimEndingDirectorySeparator(Path.GetFullPath(target)) + Path.DirectorySeparatorChar;
        foreach (var own in (string[])["jurisdictions", "schema"])
            if (there.StartsWith(Path.Combine(Path.GetFullPath(book), own) + Path.DirectorySeparatorChar, StringComparison.Ordinal))
                throw new InputException(
                    Problem.Error(
                        "wrong-folder",
                        new Mark("OUT", 1, 1),
                        $"{target} lies inside the book's {own}/",
                        "name a folder outside of the data, such as out/site"
                    )
                );
    }

    /// <summary>The book's files and the book that they make. The day is the latest on which a source was checked, unless given.</summary>
    /// <exception cref="InputException">The book has errors.</exception>
    internal static SiteInput Read(string folder, DateOnly? day)
    {
        var texts = BookFolder.Load(folder);
        var book = BookReading.Open(texts);
        var shown = day ?? LatestCheck(book);
        return new SiteInput(
            book,
            [.. texts.Files.Select(file => new SiteSource(file.Path, file.Text, YamlText.Read(file.Text, file.Path)))],
            shown,
            []
        )
        {
            Open = TypicalJobs.Rank(book, shown, book.Jurisdictions),
            Shown = ShownChanges.Of(book),
        };
    }

    private static DateOnly LatestCheck(Book book) =>
        book
            .Jurisdictions.SelectMany(place => place.Sources)
            .Select(source => source.Checked.Latest)
            .DefaultIfEmpty(new DateOnly(2000, 1, 1))
            .Max();

    /// <summary>The published evaluator; empty when there is none and none was asked for.</summary>
    /// <exception cref="InputException">The folder given has none.</exception>
    internal static ImmutableArray<SiteFile> Bundle(string? given, string from)
    {
        var found = BundleFolder(given, from);
        if (found is null && given is not null)
            throw new InputException(
                Problem.Error(
                    "no-check-page",
                    new Mark(given, 1, 1),
                    "the folder has no _framework/dotnet.js",
                    "name the wwwroot folder of the published evaluator"
                )
            );
        if (found is null)
            return [];
        var framework = Path.Combine(found, "_framework");
        var start = File.ReadAllText(Path.Combine(framework, "dotnet.js"));
        return
        [
            // What earlier publishing left behind is not named in dotnet.js, and stays behind.
            .. Directory
                .EnumerateFiles(framework)
                .Where(file =>
                    Path.GetFileName(file) == "dotnet.js"
                    || (
                        Path.GetExtension(file) is ".js" or ".wasm"
                        && start.Contains($"\"{Path.GetFileName(file)}\"", StringComparison.Ordinal)
                    )
                )
                .Order(StringComparer.Ordinal)
                .Select(file => new SiteFile($"_framework/{Path.GetFileName(file)}", File.ReadAllBytes(file))),
        ];
    }

    /// <summary>What publishing the evaluator has compressed already, as small as can be.</summary>
    private static Func<string, byte[]?> Packed(string? given, string from)
    {
        var folder = BundleFolder(given, from);
        return path =>
            folder is not null
            && path.StartsWith("_framework/", StringComparison.Ordinal)
            && Path.Combine(folder, path) is var file
            && File.Exists(file)
                ? File.ReadAllBytes(file)
                : null;
    }

    private static string? BundleFolder(string? given, string from)
    {
        string[] places = given is not null
            ? [given]
            : [Path.Combine(AppContext.BaseDirectory, "check-page"), .. Published(from), .. Published(AppContext.BaseDirectory)];
        return places.FirstOrDefault(place => File.Exists(Path.Combine(place, "_framework", "dotnet.js")));
    }

    private static IEnumerable<string> Published(string from)
    {
        for (var folder = new DirectoryInfo(from); folder is not null; folder = folder.Parent)
            yield return Path.Combine(folder.FullName, "src", "RuleBook.Browser", "bin", "Release", "net10.0", "publish", "wwwroot");
    }
}
