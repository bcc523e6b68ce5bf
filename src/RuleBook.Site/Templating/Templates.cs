using System.Collections.Concurrent;
using System.Text;
using Scriban;
using Scriban.Runtime;

namespace RuleBook.Site.Templating;

/// <summary>The site's templates and fixed files, which travel inside the assembly.</summary>
internal static class Templates
{
    private static readonly ConcurrentDictionary<string, Template> Parsed = new(StringComparer.Ordinal);

    /// <summary>A template with its values; the functions of <c>parts.html</c> are at hand.</summary>
    public static Html Render(string name, params ReadOnlySpan<(string Name, object? Value)> values)
    {
        var globals = new ScriptObject();
        foreach (var (key, value) in values)
            globals[key] = value;
        var context = Contexts.Create(globals);
        context.Evaluate(Find("parts").Page!);
        return new Html(Find(name).Render(context));
    }

    /// <summary>A fixed file.</summary>
    public static byte[] File(string name)
    {
        using var stream =
            typeof(Templates).Assembly.GetManifestResourceStream(name)
            ?? throw new ArgumentException($"there is no file '{name}'", nameof(name));
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        return copy.ToArray();
    }

    private static Template Find(string name) =>
        Parsed.GetOrAdd(
            name,
            key =>
            {
                var template = Template.Parse(Encoding.UTF8.GetString(File($"{key}.html")), $"{key}.html");
                return template.HasErrors ? throw new InvalidOperationException(string.Join('\n', template.Messages)) : template;
            }
        );
}
