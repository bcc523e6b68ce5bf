using System.Text.Json;
using RuleBook.Answers;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Telling;

/// <summary>The limits in force in a jurisdiction as JSON; the shape is described by <c>schema/limits.schema.json</c>.</summary>
public static class LimitsJson
{
    /// <summary>All versions that may be in force on a day, rule by rule.</summary>
    /// <param name="book">The book.</param>
    /// <param name="place">The jurisdiction.</param>
    /// <param name="day">The day.</param>
    /// <param name="versions">The versions.</param>
    public static string Write(Book book, Jurisdiction place, DateOnly day, IEnumerable<ResolvedVersion> versions) =>
        JsonText.Write(json =>
        {
            json.WriteStartObject();
            json.WriteString("jurisdiction", place.Id);
            json.WriteString("on", AssessmentJson.Day(day));
            json.WriteString("book", book.Digest);
            json.WriteString("edition", book.Edition?.Name);
            json.List("rules", versions, version => Write(json, book, version));
            json.WriteEndObject();
        });

    private static void Write(Utf8JsonWriter json, Book book, ResolvedVersion version)
    {
        json.WriteStartObject();
        json.WriteString("rule", version.Rule.Id);
        json.WriteString("topic", version.Rule.Topic);
        json.WriteString("title", version.Rule.Title);
        json.WritePropertyName("for");
        Write(json, book, version.Rule.For);
        json.WriteString("from", version.From?.Text);
        json.WriteString("until", version.Until?.Text);
        if (version.WarningOnly)
            json.WriteBoolean("warning-only", true);
        json.Texts("adopted", version.Adopted.Select(step => step.Rule));
        json.WriteString("mass-state", version.Measured?.MassState);
        json.Measured(version.Measured);
        var stated = version.Content as Stated;
        json.WriteString(
            "says",
            version.Content switch
            {
                Stated => "limits",
                NotEstablished => "not-established",
                _ => "not-regulated",
            }
        );
        json.List("tiers", stated?.Tiers ?? [], tier => Write(json, book, version, tier));
        json.WriteString(
            "beyond",
            stated is null ? null
                : stated.Beyond is { } beyond ? Wording.Of(beyond)
                : "not-established"
        );
        json.WriteString("ask", (version.Content as NotEstablished)?.Ask);
        json.List("sources", version.Sources, json.Source);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Book book, ResolvedVersion version, Tier tier)
    {
        json.WriteStartObject();
        json.WriteString("tier", tier.Name);
        json.WriteString("pathway", Wording.Of(tier.Pathway));
        json.List("when", tier.When.Tests, test => Write(json, book, test));
        json.List(
            "limits",
            tier.Limits,
            limit =>
            {
                json.WriteStartObject();
                json.WriteString("measure", limit.Measure);
                json.WriteString(
                    "kind",
                    limit.Kind switch
                    {
                        LimitKind.None => "no-limit",
                        LimitKind.NotEstablished => "not-established",
                        _ => "limit",
                    }
                );
                Write(json, limit.Bounds, book.Vocabulary.Measures[limit.Measure].Unit);
                json.Standing(version.Evidence.Of(tier, limit));
                json.WriteEndObject();
            }
        );
        json.Texts("provided", tier.Provided);
        json.Texts("codes", tier.Codes);
        json.WriteEndObject();
    }

    /// <summary>Several descriptions stand as one test, so that nobody takes them for tests that all have to pass.</summary>
    private static void Write(Utf8JsonWriter json, Book book, Descriptions vehicles)
    {
        if (vehicles.AnyOf is [var only])
        {
            json.List(only.Tests, test => Write(json, book, test));
            return;
        }

        json.WriteStartArray();
        json.WriteStartObject();
        json.WritePropertyName("any-of");
        json.List(vehicles.AnyOf, each => json.List(each.Tests, test => Write(json, book, test)));
        json.WriteEndObject();
        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, Book book, FactTest test)
    {
        json.WriteStartObject();
        json.WriteString("fact", test.Fact);
        json.Texts("one-of", test.OneOf);
        if (test.Bounds is not null)
            Write(json, test.Bounds, book.Vocabulary.Measures[test.Fact].Unit);
        json.WriteEndObject();
    }

    /// <summary>Ends that are not there are null; a range that is open at an end does not hold the end itself.</summary>
    private static void Write(Utf8JsonWriter json, Bounds? bounds, Unit unit)
    {
        json.Number(bounds?.Lower is { Closed: false } ? "over" : "at-least", bounds?.Lower?.Value, unit);
        json.Number(bounds?.Upper is { Closed: false } ? "under" : "at-most", bounds?.Upper?.Value, unit);
        json.WriteString("unit", unit.Symbol);
        if (string.Join("; ", new[] { bounds?.Lower?.Stated, bounds?.Upper?.Stated }.OfType<string>()) is { Length: > 0 } stated)
            json.WriteString("stated", stated);
    }
}
