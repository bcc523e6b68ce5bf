using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using RuleBook.Law;
using RuleBook.Site.Tests.Pages;
using RuleBook.Text;

namespace RuleBook.Site.Tests.ReadBack;

/// <summary>
/// The table of limits (CSV) read back against the lines of the data that it names, as they are written there, and against the versions
/// of the book.
/// </summary>
public sealed class LimitTableReadBackTests
{
    private static readonly Book Book = TheBook.Input.Book;

    private static readonly ImmutableDictionary<string, string[]> Texts = TheBook.Input.Files.ToImmutableDictionary(
        file => file.Path,
        file => file.Text.Split('\n')
    );

    private static readonly Lazy<ImmutableArray<Dictionary<string, string>>> Rows = new(() =>
    {
        var rows = ReadCsv.Of(TheBook.Site.Single(file => file.Path == "data/limits.csv").Text());
        return [.. rows.Skip(1).Select(row => rows[0].Zip(row).ToDictionary(each => each.First, each => each.Second))];
    });

    private static readonly Dictionary<ReadAs, string> Known = new()
    {
        [ReadAs.Primary] = "primary",
        [ReadAs.Secondary] = "secondary",
        [ReadAs.CommonPractice] = "common-practice",
        [ReadAs.Memory] = "memory",
    };

    [Fact]
    public void A_limit_of_the_table_is_what_stands_in_the_line_of_the_data_that_it_names()
    {
        var limits = Rows.Value.Where(row => row["measure"].Length > 0).ToArray();
        limits.Length.ShouldBeGreaterThan(500);
        foreach (var row in limits)
        {
            var line = Texts[row["file"]][int.Parse(row["line"], CultureInfo.InvariantCulture) - 1];
            line = line[Math.Max(0, line.LastIndexOf(" within: ", StringComparison.Ordinal))..]; // what opens the tier may stand before it
            var written = Regex.Match(line, $@"(?<![\w-]){Regex.Escape(row["measure"])}: (?<says>\{{[^}}]*\}}|[^,}}#]+)");
            written.Success.ShouldBeTrue($"{row["file"]}:{row["line"]} has no {row["measure"]}");
            var told = $"{row["file"]}:{row["line"]} {row["measure"]} told as {string.Join(',', row.Values)}";
            switch (written.Groups["says"].Value.Trim())
            {
                case "not-established":
                    row["kind"].ShouldBe("not-established", told);
                    break;
                case "none":
                    row["kind"].ShouldBe("none", told);
                    break;
                case var bounds:
                    row["kind"].ShouldBe("limit", told);
                    Check(row, bounds, told);
                    break;
            }
        }
    }

    [Fact]
    public void No_limit_that_is_written_in_the_data_is_left_out()
    {
        var told = Rows.Value.Select(row => (row["file"], row["line"], row["measure"])).ToHashSet();
        foreach (var file in TheBook.Input.Files.Where(file => file.Path.StartsWith("jurisdictions/", StringComparison.Ordinal)))
        foreach (var (measure, line) in Within(file.Root, false))
            told.ShouldContain((file.Path, line.ToString(CultureInfo.InvariantCulture), measure), $"{file.Path}:{line} {measure}");
    }

    [Fact]
    public void Each_row_tells_the_days_and_the_way_of_its_version_and_a_source_that_it_cites_as_it_is_known()
    {
        var versions = Book
            .Jurisdictions.SelectMany(place => place.Rules)
            .SelectMany(rule => rule.Versions.Select(version => (rule, version)))
            .ToLookup(each =>
                (each.rule.Id, (each.version.From ?? each.version.Announced)?.Text ?? "", each.version.InForceBy?.Text ?? "")
            );
        foreach (var row in Rows.Value)
        {
            var told = string.Join(',', row.Values);
            var (rule, version) = versions[($"{row["jurisdiction"]}/{row["topic"]}/{row["rule"]}", row["from"], row["in-force-by"])]
                .First(each => each.version.Proposed == (row["state"] == "proposed"));
            row["title"].ShouldBe(rule.Title);
            row["state"]
                .ShouldBe(
                    version.Proposed ? "proposed"
                        : version.Announced is not null ? "announced"
                        : "in-force",
                    told
                );
            row["disputed"].ShouldBe(version.Disputes.IsEmpty && row["adopted-from"].Length == 0 ? "no" : row["disputed"], told);
            if (version.Content is Stated stated && row["tier"].Length > 0)
            {
                var tier = stated.Tiers.Single(each => each.Name == row["tier"]);
                row["pathway"].ShouldBe(Pathways[tier.Pathway], told);
                row["conditions"].ShouldBe(string.Join(' ', tier.Provided), told);
            }

            row["kind"]
                .ShouldBeOneOf(
                    version.Content switch
                    {
                        NotRegulated => ["not-regulated"],
                        NotEstablished => ["not-established"],
                        Stated { Beyond: null } => ["limit", "none", "not-established", "beyond-not-established"],
                        Stated => ["limit", "none", "not-established", "beyond"],
                        _ => [row["kind"]],
                    }
                );
            if (row["source"].Length == 0)
                continue;
            var source = Book.Source(rule.Jurisdiction, row["source"])!;
            row["read-as"].ShouldBe(Known[source.ReadAs], told);
            row["checked"].ShouldBe(source.Checked.Text, told);
            if (version.Content is Adoption)
                continue;
            Citations(version)
                .Where(citation => Book.Source(rule.Jurisdiction, citation.Cite) == source)
                .Select(citation => citation.Clause ?? "")
                .ShouldContain(row["clause"], told);
        }
    }

    private static readonly Dictionary<Pathway, string> Pathways = new()
    {
        [Pathway.NoCertificate] = "no-certificate",
        [Pathway.Certificate] = "certificate",
        [Pathway.Approval] = "approval",
        [Pathway.Prohibited] = "prohibited",
    };

    private static IEnumerable<Citation> Citations(RuleVersion version) =>
        version.Sources.Concat(version.Content is Stated stated ? stated.Tiers.SelectMany(tier => tier.Sources) : []);

    /// <summary>What the line writes at each end; a bare amount is at most that.</summary>
    private static void Check(Dictionary<string, string> row, string bounds, string told)
    {
        var ends = bounds.StartsWith('{')
            ? bounds.Trim('{', '}', ' ').Split(", ").Select(end => end.Split(": ")).ToDictionary(end => end[0].Trim(), end => end[1].Trim())
            : new() { ["at-most"] = bounds };
        Check(row, "lower", ends.GetValueOrDefault("at-least"), ends.GetValueOrDefault("over"), told);
        Check(row, "upper", ends.GetValueOrDefault("at-most"), ends.GetValueOrDefault("under"), told);
    }

    private static void Check(Dictionary<string, string> row, string end, string? included, string? excluded, string told)
    {
        if ((included ?? excluded) is not { } written)
        {
            // An end that a line of an exception does not name is kept from the adopted rule.
            if (row["adopted-from"].Length == 0)
                row[end].ShouldBe("", told);
            return;
        }

        row[$"{end}-included"].ShouldBe(included is null ? "false" : "true", told);
        var exact = ReadRange.Of(written)!.High!.Value;
        ReadRange.Of($"{row[end]} {row["unit"]}")!.High!.Value.ShouldBe(exact, 0.001m, told);
    }

    /// <summary>The measures that stand below <c>within</c>, each with its line.</summary>
    private static IEnumerable<(string Measure, int Line)> Within(Node node, bool inside) =>
        node switch
        {
            Mapping map => map.Entries.SelectMany(entry =>
                inside ? [(entry.Key.Text, entry.Key.Mark.Line)] : Within(entry.Value, entry.Key.Text == "within")
            ),
            Sequence list => list.Items.SelectMany(item => Within(item, false)),
            _ => [],
        };
}
