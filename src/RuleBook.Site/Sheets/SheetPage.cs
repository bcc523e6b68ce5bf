using System.Text;
using RuleBook.Answers;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Site.Templating;
using RuleBook.Telling.Sheets;

namespace RuleBook.Site.Sheets;

/// <summary>The record of an answer as a page of its own, which needs no other file.</summary>
public static class SheetPage
{
    /// <summary>The page as HTML.</summary>
    /// <inheritdoc cref="RecordSheet.Of"/>
    public static string Of(Book book, Job job, Assessment assessment, IReadOnlyCollection<Remedy> remedies, string tool, DateOnly made) =>
        Templates
            .Render(
                "sheet",
                ("title", RecordSheet.Title(assessment)),
                ("style", new Html(Encoding.UTF8.GetString(Templates.File("sheet.css")))),
                ("sheet", new Html(RecordSheet.Of(book, job, assessment, remedies, tool, made)))
            )
            .Text;
}
