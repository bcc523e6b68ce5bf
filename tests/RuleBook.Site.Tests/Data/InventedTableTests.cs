using System.Text.Json;
using RuleBook.Site.Data;
using RuleBook.Site.Tests.Pages;
using RuleBook.Site.Tests.ReadBack;

namespace RuleBook.Site.Tests.Data;

/// <summary>The table of limits of the invented book, every row written by hand from its files.</summary>
public sealed class InventedTableTests
{
    private const string Columns =
        "rule|state|from|in-force-by|until|kind|pathway|tier|vehicles|measure|unit|lower|lower-included|upper|upper-included|lower-written"
        + "|upper-written|conditions|adopted-from|disputed|from-read-as|read-as|source|clause|checked|file|line";

    private const string Tolerance = "a tolerance of 5 mm";
    private const string Small = "four-wheel drive: yes; GVM at most 3500 kg";
    private const string Nation = "jurisdictions/xa/ride-height.yaml";
    private const string State = "jurisdictions/xa-n/ride-height.yaml";
    private const string Code = "primary|xa/code";
    private const string Letter = "secondary|xa/letter||2026-10-05";
    private const string Act = "primary|xa-n/act";
    private const string Adopted = "xa/ride-height/raise|yes|primary";

    private static readonly string[] OfTheNation =
    [
        $"raise|in-force|2012-01-01|||limit|no-certificate|no-certificate|{Small}|suspension-lift|mm|||55|true||50 mm with "
            + $"{Tolerance}|||yes|primary|{Letter}|{Nation}|12",
        $"raise|in-force|2012-01-01|||none|no-certificate|no-certificate|{Small}|body-lift|mm|||||||||yes|primary|{Letter}|{Nation}|12",
        $"raise|in-force|2012-01-01|||not-established|no-certificate|no-certificate|{Small}|track-increase|mm|||||||||"
            + $"yes|primary|{Letter}|{Nation}|12",
        "raise|in-force|2012-01-01|||limit|certificate|certificate||suspension-lift|mm|5|true|80|true|10 mm with "
            + $"{Tolerance}|75 mm with {Tolerance}|lane-change-test||yes|primary|{Code}|1|2026-11|{Nation}|14",
        $"raise|in-force|2012-01-01|||beyond|prohibited|||||||||||||yes|primary|{Letter}|{Nation}|7",
        $"lower|in-force||2019-05-06|2020-02-01|beyond|prohibited|||||||||||||no|primary|{Code}|2|2026-11|{Nation}|30",
        $"extend|in-force||2019-05-06||beyond-not-established||||||||||||||no|primary|{Code}|2|2026-11|{Nation}|39",
        $"extend|proposed||||limit|certificate|certificate||suspension-lift|mm|||60|true||60 mm|||no|primary|{Code}|9|2026-11|{Nation}|46",
        $"extend|proposed||||beyond|prohibited|||||||||||||no|primary|{Code}|9|2026-11|{Nation}|44",
    ];

    private static readonly string[] OfTheState =
    [
        $"raise|in-force|[2015-01-01..2015-12-31]||2016-03-01|not-regulated||||||||||||||no|primary|{Act}|3|2026-11|{State}|7",
        $"raise|in-force|2016-03-01|||limit|no-certificate|no-certificate|{Small}|suspension-lift|mm|||55|true||50 mm with "
            + $"{Tolerance}||{Adopted}|{Letter}|{Nation}|12",
        $"raise|in-force|2016-03-01|||none|no-certificate|no-certificate|{Small}|body-lift|mm||||||||{Adopted}|{Letter}|{Nation}|12",
        $"raise|in-force|2016-03-01|||not-established|no-certificate|no-certificate|{Small}|track-increase|mm||||||||"
            + $"{Adopted}|{Letter}|{Nation}|12",
        "raise|in-force|2016-03-01|||limit|certificate|certificate||suspension-lift|mm|5|true|70|true|10 mm with "
            + $"{Tolerance}|65 mm with {Tolerance}|lane-change-test|{Adopted}|{Act}|4|2026-11|{State}|14",
        $"raise|in-force|2016-03-01|||beyond|prohibited||||||||||||{Adopted}|{Letter}|{State}|10",
        "raise|announced|2027-03-01|||limit|no-certificate|no-certificate||suspension-lift|mm|||30|true||30 "
            + $"mm|||no|primary|{Act}|5|2026-11|{State}|17",
        $"raise|announced|2027-03-01|||beyond|prohibited|||||||||||||no|primary|{Act}|5|2026-11|{State}|15",
        $"swap|in-force||2014-02-03||not-established||||||||||||||no|primary|{Act}|6|2026-11|{State}|22",
    ];

    private static readonly Dictionary<string, SiteFile> Files = LimitTables.Of(InventedBook.Site).ToDictionary(file => file.Path);

    [Fact]
    public void A_row_is_what_somebody_would_write_who_reads_the_book()
    {
        Rows("data/xa.csv", "xa").ShouldBe(OfTheNation);
        Rows("data/xa-n.csv", "xa-n").ShouldBe(OfTheState);
        Files["data/limits.csv"]
            .Text()
            .ShouldBe(Files["data/xa.csv"].Text() + string.Join('\n', Files["data/xa-n.csv"].Text().Split('\n')[1..]));
        Files.Count.ShouldBe(6);
    }

    /// <summary>RFC 8259: what is absent in the table is absent, and figures, lines and what is included are no strings.</summary>
    [Theory]
    [InlineData("xa")]
    [InlineData("xa-n")]
    [InlineData("limits")]
    public void As_JSON_a_row_has_the_same_words(string name)
    {
        using var json = JsonDocument.Parse(Files[$"data/{name}.json"].Content);
        json.RootElement.GetProperty("version").GetString().ShouldBe("2");
        json.RootElement.GetProperty("book").GetString().ShouldBe(InventedBook.Site.Book.Digest);
        var table = ReadCsv.Of(Files[$"data/{name}.csv"].Text());
        json.RootElement.GetProperty("limits")
            .EnumerateArray()
            .Select(row => row.EnumerateObject().Select(each => $"{each.Name}={each.Value}").ToArray())
            .ShouldBe(
                table[1..]
                    .Select(row =>
                        table[0].Zip(row).Where(each => each.Second.Length > 0).Select(each => Said(each.First, each.Second)).ToArray()
                    )
            );
        foreach (var each in json.RootElement.GetProperty("limits").EnumerateArray().SelectMany(row => row.EnumerateObject()))
            each.Value.ValueKind.ShouldBe(
                each.Name is "lower" or "upper" or "line" ? JsonValueKind.Number
                    : each.Name is "lower-included" or "upper-included"
                        ? (each.Value.GetBoolean() ? JsonValueKind.True : JsonValueKind.False)
                    : JsonValueKind.String,
                each.Name
            );
    }

    private static string Said(string name, string text) =>
        $"{name}={(name.EndsWith("-included") ? (text == "true" ? "True" : "False") : text)}";

    private static IEnumerable<string> Rows(string path, string place)
    {
        var table = ReadCsv.Of(Files[path].Text());
        var titles = InventedBook.Site.Book.Jurisdiction(place)!.Rules.ToDictionary(rule => rule.Name, rule => rule.Title);
        foreach (var row in table[1..].Select(row => table[0].Zip(row).ToDictionary(each => each.First, each => each.Second)))
        {
            row["jurisdiction"].ShouldBe(place);
            row["topic"].ShouldBe("ride-height");
            row["title"].ShouldBe(titles[row["rule"]]);
            yield return string.Join('|', Columns.Split('|').Select(column => row[column]));
        }
    }
}
