using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using RuleBook.Site.Templating;

namespace RuleBook.Site.Building;

/// <summary>
/// The evaluator, the book that it opens, and the worker that keeps them, and all pages where somebody asks for it, for use without a
/// connection.
/// </summary>
internal static class CheckFiles
{
    private static readonly string[] Scripts =
    [
        "check.js",
        "quick.js",
        "form.js",
        "spelling.js",
        "yaml.js",
        "asking.js",
        "card.js",
        "answer.js",
        "evaluator.js",
        "notes.js",
        "vehicles.js",
        "offline.js",
    ];

    /// <summary>
    /// What the check page needs, without the page itself; for a site without one, what takes an earlier edition's out of browsers.
    /// </summary>
    public static IEnumerable<SiteFile> Of(SiteInput input, IReadOnlyList<SiteFile> pages, IReadOnlyList<SiteFile> parts)
    {
        if (input.Check.IsEmpty)
        {
            yield return new SiteFile("worker.js", Templates.File("retire.js"));
            yield break;
        }

        SiteFile[] files =
        [
            .. input.Check,
            Data.NodesJson.Write(input),
            .. Scripts.Append("sheet.css").Select(name => new SiteFile(name, Templates.File(name))),
        ];
        foreach (var file in files)
            yield return file;
        var always = pages
            .Where(page => page.Path is "check.html" or "words.html")
            .Concat(parts.Where(part => part.Path is "site.css" or "icon.svg"))
            .Concat(files)
            .ToArray();
        yield return Worker(always, [.. pages.Concat(parts).ExceptBy(always.Select(file => file.Path), file => file.Path)]);
    }

    /// <summary>The worker names the files and the state that all are in, so that a new site replaces the old one as a whole.</summary>
    private static SiteFile Worker(SiteFile[] always, SiteFile[] rest)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var file in always.Concat(rest).OrderBy(file => file.Path, StringComparer.Ordinal))
        {
            hash.AppendData(Encoding.UTF8.GetBytes($"{file.Path}\0"));
            hash.AppendData(file.Content.Span);
        }

        var head =
            $"const version = \"{Convert.ToHexStringLower(hash.GetHashAndReset())[..16]}\";\nconst files = "
            + $"[{Names(always)}];\nconst pages = [{Names(rest)}];\n";
        return new SiteFile("worker.js", (byte[])[.. Encoding.UTF8.GetBytes(head), .. Templates.File("worker.js")]);
    }

    private static string Names(SiteFile[] files) =>
        string.Join(
            ',',
            files.Select(file => file.Path).Order(StringComparer.Ordinal).Select(path => $"\"{JsonEncodedText.Encode(path)}\"")
        );
}
