using RuleBook.Authoring.Cases;
using RuleBook.Authoring.Schemas;
using RuleBook.Yaml;
using Case = RuleBook.Authoring.Cases.Case;

namespace RuleBook.Authoring.Tests.Cases;

/// <summary>The case files, the same as <c>rulebook cases</c> runs. What each expects, and from which source, stands in the file.</summary>
public sealed class CaseFilesTests
{
    internal static readonly Lazy<Dictionary<string, Case>> Cases = new(() => TestBook.Cases.ToDictionary(one => one.Id));

    public static IEnumerable<TheoryDataRow<string>> Ids =>
        Cases.Value.Keys.Select(id => new TheoryDataRow<string>(id) { TestDisplayName = id });

    public static TheoryData<string> Files =>
        [.. Directory.GetFiles(CaseFolder.Within(TestBook.Folder), "*.yaml", SearchOption.AllDirectories).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_book_gives_the_answer_of_the_source(string id)
    {
        var one = Cases.Value[id];

        CaseRun.Run(TestBook.Book, one).Failures.ShouldBeEmpty($"{one.Mark}: {one.Says} ({one.Because})");
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void A_case_file_has_the_shape_that_an_editor_is_told(string file) =>
        SchemaCheck.Find("cases", YamlText.ReadFile(file)).ShouldBeEmpty();
}
