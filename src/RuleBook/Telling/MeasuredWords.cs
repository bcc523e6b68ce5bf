using RuleBook.Law;

namespace RuleBook.Telling;

/// <summary>How a rule measures: between which points, at which mass, what it adds up.</summary>
internal static class MeasuredWords
{
    /// <summary>A sentence each for what the rule says; empty where it says nothing.</summary>
    /// <param name="measured">How it measures.</param>
    /// <param name="title">The title of a measure by its name.</param>
    public static string Of(Measured measured, Func<string, string> title)
    {
        string[] parts =
        [
            measured.Between switch
            {
                { IsDefaultOrEmpty: true } => "",
                ["not-established"] => "Between which points is not established.",
                var points => $"Measured between {string.Join(" and ", points.Select(Plain))}.",
            },
            measured.MassState switch
            {
                null => "",
                "not-established" => "At which mass is not established.",
                var state => $"Mass state: {Plain(state)}.",
            },
            .. measured.Allowances.Select(allowance => $"{Phrases.Sentence(title(allowance.Measure))} {allowance.Words}."),
            measured.Total.IsDefaultOrEmpty ? "" : $"Total: {string.Join(" + ", measured.Total.Select(title))}.",
            measured.Note?.Trim() ?? "",
        ];
        return string.Join(" ", parts.Where(part => part.Length > 0));
    }

    private static string Plain(string word) => word.Replace('-', ' ');
}
