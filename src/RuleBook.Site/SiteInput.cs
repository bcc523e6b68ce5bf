using System.Collections.Immutable;
using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Site;

/// <summary>What a site is made from. The same input gives the same bytes.</summary>
/// <param name="Book">The book.</param>
/// <param name="Files">Its files as written.</param>
/// <param name="Day">The day whose limits the pages show first.</param>
/// <param name="Check">The published evaluator for the check page (from <c>_framework/</c> on); empty for a site without it.</param>
/// <param name="ReportTo">
/// Start of an http(s) address to which a correction report is appended, percent-encoded; null for reports to copy.
/// </param>
/// <param name="Since">What the book changes against an earlier edition; null when it was not compared.</param>
public sealed record SiteInput(
    Book Book,
    ImmutableArray<SiteSource> Files,
    DateOnly Day,
    ImmutableArray<SiteFile> Check,
    string? ReportTo = null,
    EditionChanges? Since = null
)
{
    /// <summary>The documents that nobody has read, what decides most first; empty where nobody ranked them.</summary>
    public ImmutableArray<OpenDocument> Open { get; init; } = [];

    /// <summary>A mail address that takes correction reports; null where there is none.</summary>
    public string? ReportMail { get; init; }

    /// <summary>The http(s) address below which the site is published, ending with a slash; null where that is not known.</summary>
    public Uri? Address { get; init; }

    /// <summary>What changes of the law do to a job; empty where nobody looked.</summary>
    public ImmutableArray<ShownChange> Shown { get; init; } = [];
}

/// <summary>One file of the book.</summary>
/// <param name="Path">Relative to the book's folder, with forward slashes.</param>
/// <param name="Text">As written.</param>
/// <param name="Root">As nodes.</param>
public sealed record SiteSource(string Path, string Text, Node Root);

/// <summary>One file of a site.</summary>
/// <param name="Path">Relative to the site's folder, with forward slashes.</param>
/// <param name="Content">Its bytes.</param>
public sealed record SiteFile(string Path, ReadOnlyMemory<byte> Content);
