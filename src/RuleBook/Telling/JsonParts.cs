using System.Text.Json;
using Fractions;
using RuleBook.Answers;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Telling;

/// <summary>Parts that recur in an assessment's JSON.</summary>
internal static class JsonParts
{
    public static void List<T>(this Utf8JsonWriter json, IEnumerable<T> items, Action<T> write)
    {
        json.WriteStartArray();
        foreach (var item in items)
            write(item);
        json.WriteEndArray();
    }

    public static void List<T>(this Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> write)
    {
        json.WritePropertyName(name);
        json.List(items, write);
    }

    public static void Texts(this Utf8JsonWriter json, string name, IEnumerable<string> texts) =>
        json.List(name, texts, json.WriteStringValue);

    /// <summary>How a rule measures; null where it does not say.</summary>
    public static void Measured(this Utf8JsonWriter json, Measured? measured)
    {
        json.WritePropertyName("measured");
        if (measured is null)
        {
            json.WriteNullValue();
            return;
        }

        json.WriteStartObject();
        json.Texts("between", measured.Between.IsDefault ? [] : measured.Between);
        json.WriteString("mass-state", measured.MassState);
        json.Texts("total", measured.Total.IsDefault ? [] : measured.Total);
        json.WriteString("note", measured.Note?.Trim());
        json.WriteEndObject();
    }

    public static void Between(this Utf8JsonWriter json, Outcome outcome) =>
        json.Texts("between", [Wording.Of(outcome.Best), Wording.Of(outcome.Worst)]);

    public static void Number(this Utf8JsonWriter json, string name, Fraction? value, Unit unit)
    {
        json.WritePropertyName(name);
        if (value is { } known)
            json.WriteRawValue(AssessmentJson.Number(known, unit));
        else
            json.WriteNullValue();
    }

    /// <summary>The value where it is known; otherwise null, with the ends that are known.</summary>
    public static void Range(this Utf8JsonWriter json, Interval interval, Unit unit)
    {
        json.Number("value", interval.Exact, unit);
        if (interval.Exact is not null)
            return;
        json.Number("at-least", interval.Low, unit);
        json.Number("at-most", interval.High, unit);
    }

    /// <summary>How a figure is known, and the source on which that hangs.</summary>
    public static void Standing(this Utf8JsonWriter json, Standing standing)
    {
        json.WriteString("standing", Wording.Of(standing));
        json.WriteString("cite", standing.Cited is { Source: var source } ? $"{source.Jurisdiction}/{source.Id}" : null);
    }

    public static void Source(this Utf8JsonWriter json, CitedSource cited)
    {
        json.WriteStartObject();
        json.WriteString("cite", $"{cited.Source.Jurisdiction}/{cited.Source.Id}");
        json.WriteString("title", cited.Source.Title);
        json.WriteString("clause", cited.Citation.Clause);
        json.WriteString("read-as", Wording.Of(cited.Source.ReadAs));
        json.WriteString("checked", cited.Source.Checked.Text);
        if (cited.Citation.Carries is { } carries)
            json.Texts("carries", carries);
        json.WriteString("url", cited.Source.Url);
        json.WriteEndObject();
    }
}
