using System.Text.Json;
using RuleBook.Answers;

namespace RuleBook.Telling;

/// <summary>Writes a blocker as JSON.</summary>
internal static class BlockerJson
{
    public static void Write(Utf8JsonWriter json, Blocker blocker)
    {
        json.WriteStartObject();
        json.WriteString("id", blocker.Id);
        json.WriteString("kind", BlockerKinds.Word(blocker.Kind));
        json.WriteString("text", BlockerText.Sentence(blocker));
        json.WriteString("subject", blocker.Subject);
        json.WriteString("what", blocker.What);
        json.WriteString("state", blocker.State);
        if (blocker.Unit is { } unit)
        {
            json.Number("value", blocker.Value, unit);
            json.WriteBoolean("at-least", blocker.AtLeast);
            json.Number("limit", blocker.Limit, unit);
            json.Number("over", blocker.Over, unit);
            json.Number("too-close-within", blocker.TooCloseWithin, unit);
            json.WriteString("unit", unit.Symbol);
        }

        json.WriteString("limit-what", blocker.LimitWhat);
        json.WriteString("limit-fact", blocker.LimitFact);
        json.WriteString("rule", blocker.Rule);
        json.WriteString("why", blocker.Why);
        json.WriteString("ask", blocker.Ask);
        json.WriteEndObject();
    }
}
