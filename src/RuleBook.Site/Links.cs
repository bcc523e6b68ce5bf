using System.Globalization;
using System.Text;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Site;

/// <summary>Where things stand in the site. Paths are relative to the site's root; a page puts its own way up before them.</summary>
internal static class Links
{
    public static string Jurisdiction(string id) => $"jurisdictions/{Slug(id)}.html";

    public static string Topic(string id) => $"topics/{Slug(id)}.html";

    /// <summary>The page of all that is said of a measure; an empty name for what is not established or not regulated.</summary>
    public static string Measure(string topic, string measure) =>
        $"topics/{Slug(topic)}/{(measure.Length == 0 ? "open" : Slug(measure))}.html";

    public static string Rule(Rule rule) => $"{Jurisdiction(rule.Jurisdiction)}#{Anchor(rule)}";

    public static string Version(Rule rule, RuleVersion version) => $"{Jurisdiction(rule.Jurisdiction)}#{Anchor(rule, version)}";

    /// <summary>The ready-made report of a mistake in a rule.</summary>
    public static string Report(Rule rule) => $"{Jurisdiction(rule.Jurisdiction)}#report.{Anchor(rule)}";

    /// <summary>The page of a source: what it carries, when it was read, which part of it.</summary>
    public static string Source(Source source) => $"sources/{Slug(source.Jurisdiction)}/{Slug(source.Id)}.html";

    public static string Word(string kind, string name) => $"words.html#{kind}.{Slug(name)}";

    /// <summary>The check page with a job, given as JSON, in its address: what an address may hold as it is stays as it is.</summary>
    public static string Check(string job) =>
        "check.html#"
        + Uri.EscapeDataString(job).Replace("%3A", ":", StringComparison.Ordinal).Replace("%2C", ",", StringComparison.Ordinal);

    /// <summary>Where the version stands in the data.</summary>
    public static Mark Mark(ResolvedVersion version) =>
        version.Rule.Versions.FirstOrDefault(own => own.Decides && own.From?.Text == version.From?.Text)?.Mark ?? version.Rule.Mark;

    public static string Anchor(Rule rule) => $"{Slug(rule.Topic)}.{Slug(rule.Name)}";

    public static string Anchor(Rule rule, RuleVersion version) => $"{Anchor(rule)}.{Slug(Start(version))}";

    /// <summary>The start of a version as written; the same in links, feeds and calendar.</summary>
    public static string Start(RuleVersion version) =>
        version switch
        {
            { From: { } from } => from.Text,
            { Announced: { } announced } => $"announced-{announced.Text}",
            { Proposed: true } => "proposed",
            { InForceBy: { } by } => $"by-{by.Text}",
            _ => "unknown",
        };

    /// <summary>The page that shows a file of the book line by line.</summary>
    public static string Lines(string file) => $"lines/{string.Join('/', file.Split('/')[1..].Select(Slug))}.html";

    public static string Line(Mark mark) => $"{Lines(mark.File)}#L{mark.Line.ToString(CultureInfo.InvariantCulture)}";

    /// <summary>An address of somewhere else, if it is http(s) and nothing but; otherwise null.</summary>
    public static string? Web(string? address) =>
        Uri.TryCreate(address, UriKind.Absolute, out var uri) && uri.Scheme is "http" or "https" ? uri.AbsoluteUri : null;

    /// <summary>
    /// A letter with subject and text (RFC 6068); null where the address is not a plain mail address, which could carry more than that.
    /// </summary>
    public static string? Mail(string? address, string subject, string text) =>
        address?.Split('@') is [{ Length: > 0 } box, { Length: > 0 } host]
        && (box + host).All(letter => char.IsAsciiLetterOrDigit(letter) || letter is '.' or '-' or '_' or '+')
            ? $"mailto:{Uri.EscapeDataString(box)}@{host}?subject={Uri.EscapeDataString(subject)}"
                + $"&body={Uri.EscapeDataString(text.ReplaceLineEndings("\r\n"))}"
            : null;

    /// <summary>
    /// A text as part of a path or an anchor: letters, digits, full stops and hyphens stay, the rest becomes <c>_</c> and its code.
    /// </summary>
    public static string Slug(string text)
    {
        var slug = new StringBuilder(text.Length);
        foreach (var letter in text)
            if (char.IsAsciiLetterOrDigit(letter) || letter == '-' || (letter == '.' && slug.Length > 0))
                slug.Append(letter);
            else
                slug.Append('_').Append(((int)letter).ToString("x", CultureInfo.InvariantCulture));
        return slug.Length == 0 ? "_" : slug.ToString();
    }
}

/// <summary>A text that leads somewhere in the site.</summary>
internal sealed record Link(string Text, string Url);
