using System.Text.Json;
using RuleBook.Answers;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Telling;

/// <summary>Writes a finding as JSON.</summary>
internal static class FindingJson
{
    public static void Write(Utf8JsonWriter json, Finding finding)
    {
        var version = finding.Version;
        json.WriteStartObject();
        json.WriteString("rule", version.Rule.Id);
        json.WriteString("title", version.Rule.Title);
        json.WriteString("from", version.From?.Text);
        json.WriteString("until", version.Until?.Text);
        json.WriteBoolean("in-force-is-certain", finding.Certain);
        if (version.WarningOnly)
            json.WriteBoolean("warning-only", true);
        json.List(
            "adopted",
            version.Adopted,
            step =>
            {
                json.WriteStartObject();
                json.WriteString("rule", step.Rule);
                json.WriteString("as-of", AssessmentJson.Day(step.AsOf));
                json.WriteString("kind", step.Moving ? "moving" : "fixed");
                json.WriteEndObject();
            }
        );
        json.WriteString("pathway", finding.Outcome.Decided ? Wording.Of(finding.Outcome.Best) : null);
        json.Between(finding.Outcome);
        json.WriteString("tier", finding.Tier?.Name);
        json.Texts("codes", finding.Tier?.Codes ?? []);
        json.List("limits", finding.Limits, check => Write(json, version, check));
        json.List("exceeded", finding.Exceeded, check => Write(json, version, check));
        json.WriteString("alternative", finding.Tier is { } own ? Alternatives.Of(finding, own) : "");
        var reason = finding.Reason;
        json.List("closed", finding.Closed, closed => Write(json, finding, closed, reason.Contains(closed)));
        json.List(
            "conditions",
            finding.Conditions,
            condition =>
            {
                json.WriteStartObject();
                json.WriteString("condition", condition.Condition.Name);
                json.WriteString("state", Wording.Condition(condition.State));
                json.WriteEndObject();
            }
        );
        json.WritePropertyName("indication");
        if (finding.Indication is { } indication)
        {
            json.WriteStartObject();
            json.WriteString("rule", indication.Rule);
            json.Between(indication.Outcome);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNullValue();
        }

        json.List("sources", version.Sources.Concat(finding.TierSources), json.Source);
        json.Measured(version.Measured);
        json.Texts("notes", NoteWords.Of(version));
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Finding finding, ClosedTier closed, bool reason)
    {
        json.WriteStartObject();
        json.WriteString("tier", closed.Tier.Name);
        json.WriteString("alternative", Alternatives.Of(finding, closed.Tier));
        json.WriteString("pathway", Wording.Of(closed.Tier.Pathway));
        json.WriteBoolean("reason", reason);
        json.List("limits", closed.Limits, check => Write(json, finding.Version, check));
        json.Texts("conditions", closed.Conditions.Select(condition => condition.Name));
        json.List(
            "facts",
            closed.Facts,
            fact =>
            {
                json.WriteStartObject();
                json.WriteString("title", fact.Title);
                json.WriteString("is", fact.Is);
                json.WriteEndObject();
            }
        );
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, ResolvedVersion version, LimitCheck check)
    {
        var unit = check.Measure.Unit;
        json.WriteStartObject();
        json.WriteString("tier", check.Tier.Name);
        json.WriteString("measure", check.Measure.Name);
        json.Range(check.Value, unit);
        json.WriteString(
            "kind",
            check.Limit.Kind switch
            {
                LimitKind.Bounded => "limit",
                LimitKind.None => "none",
                _ => "not-established",
            }
        );
        json.Number("limit", check.Bound?.Value, unit);
        json.WriteString("bound", check.Bound is { } bound ? Words(bound, check.IsUpper) : null);
        json.WriteString("unit", unit.Symbol);
        if (check.Bound?.Written is { } written && written.Unit != unit)
            json.WriteString("written", written.ToString());
        if (check.Bound?.Stated is { } stated)
            json.WriteString("stated", stated);
        json.Number("margin", check.Margin, unit);
        if (check.Guarded is { } guarded)
        {
            json.Number("guard-band", guarded.GuardBand, unit);
            json.WriteString("measurement", Wording.Of(guarded.Conformity));
        }

        json.WriteString(
            "holds",
            check.Holds switch
            {
                Truth.Yes => "yes",
                Truth.No => "no",
                _ => "unknown",
            }
        );
        json.Standing(version.Evidence.Of(check.Tier, check.Limit));
        json.WriteEndObject();
    }

    /// <summary>The word of the data for an end of a range.</summary>
    internal static string Words(Bound bound, bool upper) =>
        (upper, bound.Closed) switch
        {
            (true, true) => "at-most",
            (true, false) => "under",
            (false, true) => "at-least",
            _ => "over",
        };
}
