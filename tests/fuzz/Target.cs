using RuleBook.Text;

namespace RuleBook.Fuzz;

/// <summary>One kind of input and what reads it.</summary>
/// <param name="Kind">Name, also of the folder of kept seeds.</param>
/// <param name="Share">Its share of the time.</param>
/// <param name="Seeds">Inputs to start from.</param>
/// <param name="Mutate">Makes an input of another.</param>
/// <param name="Read">Reads it and returns the whole outcome; an explained refusal is an <see cref="InputException"/>.</param>
internal sealed record Target(string Kind, int Share, string[] Seeds, Func<Mutation, string, string> Mutate, Func<string, string> Read)
{
    /// <summary>The outcome of an input.</summary>
    public string Outcome(string input)
    {
        try
        {
            return Read(input);
        }
        catch (InputException refused)
        {
            return "refused\n" + string.Join('\n', refused.Problems);
        }
    }

    /// <summary>What is new about an outcome: the verdict or the codes, without places and figures.</summary>
    public static int Signature(string outcome) =>
        string.Join(
                '|',
                outcome
                    .Split('\n')
                    .Select(line =>
                        line.IndexOf(": error ", StringComparison.Ordinal) is var at and >= 0
                            ? line[at..].Split(':')[1]
                            : string.Concat(line.Split(':')[0].Where(letter => !char.IsDigit(letter))).Trim()
                    )
                    .Take(40)
                    .Distinct()
                    .Order(StringComparer.Ordinal)
            )
            .GetHashCode(StringComparison.Ordinal);
}
