using System.Buffers;
using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using RuleBook.Authoring.Changes;
using RuleBook.Law;
using RuleBook.Site;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Cli.Commands;

/// <summary>What each change of the law does to the smallest job that shows it, as the site tells it.</summary>
internal static class ShownChanges
{
    public static ImmutableArray<ShownChange> Of(Book book) =>
        [
            .. LawChanges
                .Of(book)
                .Select(change => new ShownChange(
                    change.Rule,
                    change.From,
                    change.After.Says,
                    Json(change.Before.Yaml),
                    Json(change.After.Yaml),
                    change.Was,
                    change.Is
                )),
        ];

    private static string Json(string job)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer))
            NodeJson.Write(json, YamlText.Read(job, "witness"));
        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }
}
