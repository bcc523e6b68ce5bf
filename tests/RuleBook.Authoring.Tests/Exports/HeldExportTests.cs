using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using RuleBook.Authoring.Exports;
using RuleBook.Law;

namespace RuleBook.Authoring.Tests.Exports;

/// <summary>
/// The export of an invented book for 20 November 2018, against lines held by hand: <c>tests/invented-book/held/export</c>. On that day it
/// is not known which of two things is in force of one rule, and nothing is recorded of another yet.
/// </summary>
public sealed class HeldExportTests
{
    private static readonly XNamespace Dmn = "https://www.omg.org/spec/DMN/20191111/MODEL/";
    private static readonly DateOnly Day = new(2018, 11, 20);
    private static readonly Regex Kept = new("-lift|-growth\\b(?!-)|track-increase|,yes|,MA$");
    private static readonly Book Book = InventedBook.WithSouth;

    [Theory]
    [InlineData("limits")]
    [InlineData("rulings")]
    [InlineData("parts")]
    [InlineData("versions")]
    [InlineData("tiers")]
    [InlineData("tests")]
    [InlineData("implied")]
    [InlineData("pathways")]
    public void A_table_reads_as_the_book_beside_it(string name) =>
        Texts(BookExport.Csv(Book, Day))[$"{name}.csv"].ReplaceLineEndings("\n").ShouldBe(InventedBook.Held($"export/{name}.csv"));

    /// <summary>
    /// A rule that says that nothing is regulated, tiers of one pathway, one without a bound, and a bound that is not reached.
    /// </summary>
    [Fact]
    public void A_limit_says_what_kind_it_is_and_alternatives_have_a_letter()
    {
        Limits(Book, new DateOnly(2015, 12, 31))
            .ShouldContain(
                "xa-n,ride-height,xa-n/ride-height/raise,,,,,,not regulated,,,,,[2015-01-01..2015-12-31],2016-03-01,authority's "
                    + "text,xa-n/act 3"
            );
        const string Rule = "au-qld,ride-height,au-qld/ride-height/raise";
        const string Since = "2012-01-01,,authority's text,au-qld/law";
        Limits(
                SmallBook.WithVersions(
                    "- {from: 2012-01-01, sources: [{cite: law}], beyond: not-established, tiers: [{pathway: no-certificate, name: a, "
                        + "within: {suspension-lift: 50 mm}}, {pathway: no-certificate, name: b, when: {four-wheel-drive: yes}}, "
                        + "{pathway: certificate, within: {gvm: {over: 3 t}}}]}"
                ),
                Day
            )
            .Skip(1)
            .ShouldBe([
                $"{Rule},a,no-certificate,A,suspension-lift,mm,limit,,50,yes,yes,{Since}",
                $"{Rule},b,no-certificate,B,,,no bounds,,,,,{Since}",
                $"{Rule},certificate,certificate,,gvm,kg,limit,3000,,no,yes,{Since}",
                $"{Rule},beyond,,,,,not established,,,,,{Since}",
            ]);

        static string[] Limits(Book book, DateOnly day) =>
            Texts(BookExport.Csv(book, day))["limits.csv"].ReplaceLineEndings("\n").TrimEnd('\n').Split('\n');
    }

    /// <summary>What moves a lift, what it is added up from, and what is done about a measure that asks for a rule of its own.</summary>
    [Theory]
    [InlineData("facts")]
    [InlineData("quantities")]
    [InlineData("movements")]
    [InlineData("movement_topics")]
    [InlineData("speaks")]
    [InlineData("judges")]
    [InlineData("test_words")]
    public void Of_a_long_table_the_lines_of_lifts_and_tracks_read_as_the_book_beside_it(string name) =>
        string.Concat(
                Texts(BookExport.Csv(Book, Day))[$"{name}.csv"]
                    .ReplaceLineEndings("\n")
                    .Split('\n')
                    .Where((line, at) => at == 0 || Kept.IsMatch(line))
                    .Select(line => $"{line}\n")
            )
            .ShouldBe(InventedBook.Held($"export/{name}.csv"));

    [Theory]
    [InlineData("xa")]
    [InlineData("xa-n")]
    [InlineData("xa-s")]
    public void A_model_reads_as_the_book_beside_it(string place) =>
        string.Concat(Lines(XDocument.Parse(Texts(BookExport.Dmn(Book, Day))[$"{place}.dmn"]).Root!).Select(line => $"{line}\n"))
            .Replace(Book.Digest, "sha256:...", StringComparison.Ordinal)
            .ShouldBe(InventedBook.Held($"export/{place}.dmn.txt"));

    /// <summary>OMG DMN 1.3, 6.2.1: an id is unique in its model, and a reference leads to one of it.</summary>
    [Fact]
    public void Every_reference_of_a_model_leads_to_one_element_of_the_kind_that_it_names()
    {
        foreach (var model in Texts(BookExport.Dmn(Book, Day)).Where(file => file.Key.EndsWith(".dmn", StringComparison.Ordinal)))
        {
            var root = XDocument.Parse(model.Value).Root!;
            string[] ids = [.. root.Descendants().Attributes("id").Select(id => id.Value)];
            ids.ShouldBeUnique();
            var kinds = root.Elements()
                .Where(each => each.Attribute("id") is not null)
                .ToDictionary(each => $"#{each.Attribute("id")!.Value}");
            foreach (var reference in root.Descendants().Where(each => each.Attribute("href") is not null))
                reference.Name.LocalName.ShouldBe(
                    kinds[reference.Attribute("href")!.Value].Name == Dmn + "inputData" ? "requiredInput" : "requiredDecision"
                );
        }
    }

    [Fact]
    public void A_bound_that_no_decimal_holds_is_told_with_the_rule_that_sets_it()
    {
        // invented: nine decimals; 10.123456789 less the tolerance of 5
        var edited = InventedBook.Of(texts =>
            texts["jurisdictions/xa/ride-height.yaml"] = texts["jurisdictions/xa/ride-height.yaml"]
                .Replace("suspension-lift: 50 mm", "suspension-lift: { over: 10.123456789 mm, at-most: 50 mm }", StringComparison.Ordinal)
        );
        BookExport
            .Sql(edited, Day)
            .Inexact.ShouldBe([
                "xa/ride-height/raise, no-certificate: suspension-lift 5.12345679 mm",
                "xa-n/ride-height/raise, no-certificate: suspension-lift 5.12345679 mm",
            ]);
    }

    private static Dictionary<string, string> Texts(BookExport export) =>
        export.Files.ToDictionary(file => file.Name, file => Encoding.UTF8.GetString(file.Bytes.Span));

    /// <summary>A line an input, a quantity that follows, a decision and a row of its table.</summary>
    private static IEnumerable<string> Lines(XElement model)
    {
        yield return $"{Attributes(model)}: {model.Element(Dmn + "description")!.Value}";
        foreach (var each in model.Elements().Where(each => each.Attribute("id") is not null))
        {
            var variable = each.Element(Dmn + "variable")!;
            yield return $"{each.Name.LocalName} {Attributes(each)}: {each.Element(Dmn + "description")?.Value} [{Attributes(variable)}]";
            if (each.Element(Dmn + "literalExpression") is { } text)
                yield return $"  {text.Value}";
            var reads = each.Elements(Dmn + "informationRequirement")
                .Select(read => read.Elements().Single().Attribute("href")!.Value[1..]);
            if (reads.Any())
                yield return $"  reads {string.Join(' ', reads)}";
            if (each.Element(Dmn + "decisionTable") is not { } table)
                continue;
            yield return $"  {table.Attribute("hitPolicy")!.Value}: "
                + string.Join(
                    ", ",
                    table
                        .Elements(Dmn + "input")
                        .Select(input =>
                            $"{input.Attribute("label")!.Value} {input.Value} "
                            + input.Element(Dmn + "inputExpression")!.Attribute("typeRef")!.Value
                        )
                        .Concat(table.Elements(Dmn + "output").Select(Attributes))
                        .Concat(table.Elements(Dmn + "annotation").Select(Attributes))
                );
            foreach (var row in table.Elements(Dmn + "rule"))
                yield return $"  {string.Join(" | ", row.Elements().Select(cell => cell.Value))}";
        }
    }

    private static string Attributes(XElement element) =>
        string.Join(' ', element.Attributes().Where(each => !each.IsNamespaceDeclaration).Select(each => each.Value));
}
