using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using RuleBook.Site.Templating;

namespace RuleBook.Site.Building;

/// <summary>The evaluator, the book that it opens, and the worker that keeps both for use without a connection.</summary>
internal static class CheckFiles
{
    private static readonly string[] Scripts = ["check.js", "quick.js", "form.js", "spelling.js", "yaml.js", "asking.js", "card.js", "answer.js", "evaluator.js"];

    /// <summary>What the check page needs, without the page itself; for a site without one, what takes an earlier edition's out of browsers.</summary>
    public static IEnumerable<SiteFile> Of(SiteInput input, SiteFile page, SiteFile style)
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
        foreach (var file in files) yield return file;
        yield return Worker([page, style, new SiteFile("icon.svg", Templates.File("icon.svg")), .. files]);
    }

    /// <summary>The worker names the files and the state that they are in, so that a new site replaces the old one as a whole.</summary>
    private static SiteFile Worker(SiteFile[] files)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var file in files.OrderBy(file => file.Path, StringComparer.Ordinal))
        {
            hash.AppendData(Encoding.UTF8.GetBytes($"{file.Path}\0"));
            hash.AppendData(file.Content.Span);
        }

        var names = string.Join(',', files.Select(file => file.Path).Order(StringComparer.Ordinal).Select(path => $"\"{JsonEncodedText.Encode(path)}\""));
        var head = $"const version = \"{Convert.ToHexStringLower(hash.GetHashAndReset())[..16]}\";\nconst files = [{names}];\n";
        return new SiteFile("worker.js", (byte[])[.. Encoding.UTF8.GetBytes(head), .. Templates.File("worker.js")]);
    }
}
