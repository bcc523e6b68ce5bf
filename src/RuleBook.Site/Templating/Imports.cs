using System.Text;

namespace RuleBook.Site.Templating;

/// <summary>
/// What the page's own scripts import: named in the head of a page, all are asked for at once and not one after the other.
/// </summary>
internal static class Imports
{
    private const string From = " from \"./";

    /// <summary>All that some scripts import, directly or not, without themselves, in ordinal order.</summary>
    public static string[] Of(IEnumerable<string> scripts)
    {
        var known = scripts.ToHashSet(StringComparer.Ordinal);
        var left = new Queue<string>(known);
        var imported = new SortedSet<string>(StringComparer.Ordinal);
        while (left.TryDequeue(out var script))
            foreach (var name in Direct(script).Where(known.Add))
            {
                imported.Add(name);
                left.Enqueue(name);
            }

        return [.. imported];
    }

    private static IEnumerable<string> Direct(string script) =>
        Encoding
            .UTF8.GetString(Templates.File(script))
            .Split('\n')
            .Where(line => line.StartsWith("import ", StringComparison.Ordinal) && line.Contains(From, StringComparison.Ordinal))
            .Select(line => line.Split(From)[1].Split('"')[0]);
}
