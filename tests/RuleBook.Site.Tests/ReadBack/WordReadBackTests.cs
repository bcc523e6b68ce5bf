using System.Globalization;
using AngleSharp.Dom;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Site.Tests.ReadBack;

/// <summary>
/// The page of words read back against the files of <c>schema/vocabulary</c>: each word once, under its kind, with all that it says.
/// </summary>
public sealed class WordReadBackTests
{
    [Theory]
    [InlineData("measure", "measures.yaml")]
    [InlineData("fact", "facts.yaml")]
    [InlineData("condition", "conditions.yaml")]
    [InlineData("pathway", "pathways.yaml")]
    public void A_word_stands_with_its_title_its_unit_or_values_and_its_definition_and_leads_to_its_line(string kind, string file)
    {
        var page = InventedPages.Of("words.html");
        var heading = page.GetElementById(kind)!;
        heading.LocalName.ShouldBe("h2");
        var entries = heading.NextElementSibling!.QuerySelectorAll("dl.words > div").ToArray();
        var yaml = YamlText.Read(File.ReadAllText(Path.Combine(TheBook.Folder, "schema", "vocabulary", file)), file);
        // A condition with a figure is a word for each figure that a rule names; the invented book names none.
        Mapping[] words =
        [
            .. ((Sequence)((Mapping)yaml).Find($"{kind}s")!).Items.Cast<Mapping>().Where(word => word.Find("figure") is null),
        ];
        heading.NextElementSibling.QuerySelector("summary")!.TextContent.ShouldBe($"{words.Length} words");
        entries.Length.ShouldBe(words.Length);
        var order =
            kind == "pathway"
                ? words.Select(word => Of(word, "title"))
                : words.Select(word => Of(word, "title")).Order(StringComparer.Ordinal);
        entries.Select(entry => Plain(entry.QuerySelector("dt")!.FirstChild!)).ShouldBe(order);
        foreach (var word in words)
        {
            var name = Of(word, kind);
            var entry = entries.Single(entry => entry.QuerySelector("dt code")!.TextContent == name);
            entry.Id.ShouldBe($"{kind}.{name}");
            Plain(entry.QuerySelector("dt")!.FirstChild!).ShouldBe(Of(word, "title"), name);
            Plain(entry.QuerySelector("dd")!).ShouldBe($"{Plain(Of(word, "definition"))} data line", name);
            var line = word.Mark.Line.ToString(CultureInfo.InvariantCulture);
            entry.QuerySelector("dd a")!.GetAttribute("href").ShouldBe($"lines/vocabulary/{file}.html#L{line}", name);
            var beside = entry.QuerySelector("dt small") is { } small ? Plain(small) : "";
            if (kind == "measure")
                beside.ShouldBe(word.Find("unit") is null ? "date" : Of(word, "unit"), name);
            else if (kind == "fact" && word.Find("values") is Sequence { Items: [Scalar first, ..] values } && first.Text != "categories")
                beside.ShouldBe(string.Join(", ", values.Select(value => ((Scalar)value).Text)), name);
            else if (kind != "fact")
                beside.ShouldBeEmpty(name);
        }
    }

    private static string Of(Mapping word, string key) => ((Scalar)word.Find(key)!).Text;

    private static string Plain(INode node) => Plain(node.TextContent);

    private static string Plain(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
