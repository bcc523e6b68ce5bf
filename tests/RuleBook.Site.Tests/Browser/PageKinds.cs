namespace RuleBook.Site.Tests.Browser;

/// <summary>One page of each kind.</summary>
internal static class PageKinds
{
    public static string[] All { get; } =
    [
        "index.html",
        "coverage.html",
        "open.html",
        "compare.html",
        "compare/us.html",
        "jurisdictions/au-qld.html",
        "topics/ride-height.html",
        "topics/certification.html",
        "topics/ride-height/suspension-lift.html",
        "changes.html",
        "reread.html",
        "questions.html",
        "data.html",
        "words.html",
        "reference.html",
        "sources/au-qld/local-news-2019-10-11.html",
        "lines/au-qld/ride-height.yaml.html",
        "check.html",
    ];
}
