using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;
using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Browser;

/// <summary>What the check page's script may call.</summary>
[SupportedOSPlatform("browser")]
internal static partial class Evaluator
{
    private static Book? opened;

    private static Book Book => opened ?? throw new InputException("the book has not been opened");

    /// <summary>Opens the book that the site carries; called once.</summary>
    [JSExport]
    internal static void Open(string book) => opened = BookJson.Read(book);

    /// <summary>A job file, YAML or JSON, for the form.</summary>
    [JSExport]
    internal static string Read(string file) => PageJson.Whole("", () => Answering.ReadFile(file));

    [JSExport]
    internal static string Assess(string job, string today) => PageJson.Whole(job, () => Answering.Assess(Book, job, today));

    [JSExport]
    internal static string Record(string job, string today) => PageJson.Whole(job, () => Answering.Record(Book, job, today));

    [JSExport]
    internal static string Reasons(string job) => PageJson.Whole(job, () => Answering.Reasons(Book, job));

    [JSExport]
    internal static string Beside(string job, string places, string today) =>
        PageJson.Whole(job, () => Answering.Beside(Book, job, places, today));

    [JSExport]
    internal static string Across(string job) => PageJson.Whole(job, () => Answering.Across(Book, job));

    [JSExport]
    internal static string Margin(string job) => PageJson.Whole(job, () => Answering.Margin(Book, job));
}
