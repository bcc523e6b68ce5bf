using RuleBook.Site.Forms;
using RuleBook.Site.Templating;

namespace RuleBook.Site.Pages;

/// <summary>The form for a job; its answer comes from the evaluator compiled for the browser.</summary>
internal static class CheckPage
{
    public static Page Of(SiteBook site) =>
        new(
            "check.html",
            "Check a job",
            "check",
            Templates.Render("check", ("root", ""), ("parts", FormReader.Read(site))),
            ["check.js", "notes.js"]
        )
        {
            Description =
                "Is a modified vehicle allowed where it is registered, by which pathway, and what stands in the way? Answered in "
                + "the page; nothing that is typed leaves it.",
        };
}
