using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using System.Xml;
using System.Xml.Schema;
using RuleBook.Authoring.Exports;
using RuleBook.Authoring.Tests.Cases;
using RuleBook.Authoring.Tests.Proof;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Physics.Tyres;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Authoring.Tests.Exports;

/// <summary>
/// The decision tables are models of DMN 1.3 by the schema that the OMG publishes (DMN13.xsd, as the package dmn-moddle ships it), and the
/// engine feelin finds in them what the evaluator finds: of the cases of the present day and random vehicles, or, where
/// RULEBOOK_RANDOM_VEHICLES says how many of these, of every case of every day.
/// </summary>
public sealed class DmnTests(ITestOutputHelper output) : IDisposable
{
    private const int FewVehicles = 500;

    private static readonly DateOnly Day = new(2026, 11, 27);
    private static readonly bool All = Environment.GetEnvironmentVariable("RULEBOOK_RANDOM_VEHICLES") is not null;
    private static readonly Lazy<Ruling[]> Rulings = new(() =>
        [.. TestBook.Book.Jurisdictions.Select(place => Ruling.On(TestBook.Book, place, Day))]
    );

    private readonly string folder = Directory.CreateTempSubdirectory("rulebook-dmn-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void The_same_book_and_day_give_the_same_models()
    {
        var export = BookExport.Dmn(TestBook.Book, Day);
        export.Files.Length.ShouldBe(TestBook.Book.Jurisdictions.Length + 1);
        foreach (var (file, again) in export.Files.Zip(BookExport.Dmn(TestBook.Book, Day).Files))
            (again.Name, Convert.ToHexString(again.Bytes.Span)).ShouldBe((file.Name, Convert.ToHexString(file.Bytes.Span)));
    }

    [Fact]
    public async Task An_engine_of_the_standard_gives_each_case_and_random_vehicles_what_the_evaluator_gives()
    {
        if (await Tools() is not { } tools)
            return;
        var models = new Dictionary<DecisionTable, (string File, HashSet<string> Seen)>(ReferenceEqualityComparer.Instance);
        await using var expected = new StreamWriter(Path.Combine(folder, "expected.ndjson"));
        foreach (var vehicle in Cases().Concat(RandomVehicles()).Concat(BeforeRandomRules()))
        {
            var table = vehicle.Ruling.Table;
            if (!models.TryGetValue(table, out var model))
            {
                models[table] = model = ($"{vehicle.Ruling.Place}-{models.Count}.dmn", []);
                await File.WriteAllTextAsync(
                    Path.Combine(folder, model.File),
                    DmnModel.Of(vehicle.Ruling, "A test."),
                    TestContext.Current.CancellationToken
                );
            }

            var row = table.NewRow();
            row.Set(vehicle.Facts);
            var inputs = Inputs(table, row, vehicle.Facts);
            if (model.Seen.Add(JsonSerializer.Serialize(inputs)))
                await expected.WriteLineAsync(
                    JsonSerializer.Serialize(
                        new
                        {
                            model = model.File,
                            name = vehicle.Name,
                            inputs,
                            gives = Gives(table, row),
                        }
                    )
                );
        }

        await expected.DisposeAsync();
        Validate(Path.Combine(tools, "node_modules", "dmn-moddle", "resources", "dmn", "xsd"));
        var (code, said) = await Run(
            "node",
            Path.Combine(TestBook.Folder, "tests", "RuleBook.Authoring.Tests", "Exports", "run-dmn.mjs"),
            tools,
            folder
        );
        output.WriteLine(said);
        (code, said.TrimEnd().EndsWith(" tables compared, 0 differ", StringComparison.Ordinal)).ShouldBe((0, true), said);
    }

    private static IEnumerable<SqlVehicle> Cases()
    {
        foreach (var one in CaseFilesTests.Cases.Value.Values)
        {
            var place = TestBook.Book.Jurisdiction(one.Job.RegisteredIn)!;
            var now = Rulings.Value.First(ruling => ruling.Place == place.Id);
            var isNow = new[] { one.Job.Dates.Work, one.Job.Dates.Certification, one.Job.Dates.Inspection }.All(day =>
                day is null || (day >= now.First && day <= now.Last)
            );
            if (!All && !isNow)
                continue;
            var ruling = isNow ? now : Ruling.Of(TestBook.Book, place, one.Job.Dates);
            yield return new SqlVehicle(
                one.Id,
                ruling,
                Written(JobFacts.Of(one.Job, TestBook.Book.Vocabulary, one.Job.Dates.For(place.DecidedBy), DiameterBasis.Handbook))
            );
        }
    }

    private static IEnumerable<SqlVehicle> RandomVehicles()
    {
        var book = TestBook.Book;
        ImmutableArray<ImmutableArray<ResolvedVersion>>[] rules =
        [
            .. Rulings.Value.Select(ruling =>
                ruling.Table.RuleIds.Select(id => Resolver.Resolve(book, book.Rule(id)!, Day)).ToImmutableArray()
            ),
        ];
        for (var at = 0; at < (All ? SqlJudgingTests.Vehicles : FewVehicles); at++)
        {
            var random = new Random(unchecked(SqlJudgingTests.Seed + at));
            var place = random.Next(rules.Length);
            yield return new SqlVehicle(
                $"{at}",
                Rulings.Value[place],
                Written(new RandomFacts(book.Vocabulary, rules[place], random).Facts)
            );
        }
    }

    /// <summary>
    /// Random vehicles before rules such as no jurisdiction has: of several descriptions of vehicles, of what is left over.
    /// </summary>
    private static IEnumerable<SqlVehicle> BeforeRandomRules()
    {
        for (var at = 0; at < 10; at++)
        {
            var random = new Random(unchecked(SqlJudgingTests.Seed + at));
            var book = RandomBook.Of(random);
            var ruling = Ruling.On(book, book.Jurisdictions[0], Day);
            var rules = ruling.Table.RuleIds.Select(id => Resolver.Resolve(book, book.Rule(id)!, Day)).ToImmutableArray();
            for (var vehicle = 0; vehicle < 20; vehicle++)
                yield return new SqlVehicle($"{at}-{vehicle}", ruling, Written(new RandomFacts(book.Vocabulary, rules, random).Facts));
        }
    }

    /// <summary>The facts as decimals hold them, with what the category says of a GVM that is not stated.</summary>
    private static FactSet Written(FactSet facts)
    {
        facts = SqlJudgingTests.AsWritten(facts);
        return
            !facts.Measures.ContainsKey(KnownWords.Gvm)
            && facts.Words.TryGetValue(KnownWords.Category, out var category)
            && TestBook.Book.Vocabulary.CategoryGvms.TryGetValue(category, out var gvm)
            ? facts.With(KnownWords.Gvm, new Derived(new Interval(gvm.Over is { } over ? over + 1 : null, gvm.AtMost), ""))
            : facts;
    }

    /// <summary>What a user of the model states: words, conditions, both ends of what is known of each measure; the rest is null.</summary>
    private static SortedDictionary<string, object?> Inputs(DecisionTable table, Row row, FactSet facts)
    {
        var inputs = new SortedDictionary<string, object?>(StringComparer.Ordinal);
        foreach (var input in table.Inputs)
        {
            var name = DmnTable.Name(input.Name);
            if (input.Kind == InputKind.Word)
                inputs[name] = facts.Words.GetValueOrDefault(input.Name);
            else if (input.Kind == InputKind.Condition)
                inputs[name] = facts.Shown.TryGetValue(input.Name, out var met)
                    ? met
                        ? "met"
                        : "not met"
                    : null;
            else
            {
                var (measure, stated) = (table.Vocabulary.Measures[input.Name], row.Stated(input.At));
                inputs[$"{name}_low"] = Number(measure, stated?.Low);
                inputs[$"{name}_high"] = Number(measure, stated?.High);
            }
        }

        return inputs;
    }

    private static decimal? Number(Measure measure, Exact? end) =>
        end is { } known ? decimal.Parse(Decimals.Of(measure, known.Value), CultureInfo.InvariantCulture) : null;

    private static SortedDictionary<string, string> Gives(DecisionTable table, Row row)
    {
        var (gives, watch) = (new SortedDictionary<string, string>(StringComparer.Ordinal), default(NoWatch));
        for (var rule = 0; rule < table.Rules.Length; rule++)
        for (var at = table.Rules[rule].FirstVersion; at < table.Rules[rule].EndVersion; at++)
        {
            var (binds, outcome) = (table.Binds(at, row.Cells), table.JudgeVersion(at, row.Cells, ref watch));
            if (binds == Truth.Unknown)
                outcome = outcome.Or(new Outcome(Pathway.NoCertificate, Pathway.NoCertificate));
            gives[DmnModel.Id(table, rule, at)] =
                binds == Truth.No ? DmnTable.Nothing
                : outcome.Decided ? Answers.Wording.Of(outcome.Best)
                : DmnTable.Undecided;
        }

        return gives;
    }

    private void Validate(string schemas)
    {
        var set = new XmlSchemaSet { XmlResolver = new XmlUrlResolver() };
        set.Add(null, Path.Combine(schemas, "DMN13.xsd"));
        var settings = new XmlReaderSettings { ValidationType = ValidationType.Schema, Schemas = set };
        foreach (var file in Directory.GetFiles(folder, "*.dmn"))
        {
            using var reader = XmlReader.Create(file, settings);
            while (reader.Read()) { } // throws at the first place that the schema does not allow
        }
    }

    /// <summary>The folder of CI's npm tools; null where there is no npm, except in CI.</summary>
    private async Task<string?> Tools()
    {
        var tools = Path.Combine(folder, "tools");
        Directory.CreateDirectory(tools);
        try
        {
            var (code, said) = await Run("bash", Path.Combine(TestBook.Folder, ".ci", "tools", "install"), tools);
            code.ShouldBe(0, said);
            return tools;
        }
        catch (System.ComponentModel.Win32Exception) when (Environment.GetEnvironmentVariable("CI") != "true")
        {
            Assert.Skip("no shell to install the engine");
        }
        catch (ShouldAssertException) when (Environment.GetEnvironmentVariable("CI") != "true")
        {
            Assert.Skip("the engine cannot be installed: no npm");
        }

        return null;
    }

    private static async Task<(int Code, string Said)> Run(string program, params string[] arguments)
    {
        using var process = Process.Start(
            new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true }
        )!;
        var error = process.StandardError.ReadToEndAsync();
        var said = await process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync();
        return (process.ExitCode, said + await error);
    }
}
