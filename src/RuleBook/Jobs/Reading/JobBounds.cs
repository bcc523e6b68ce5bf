using RuleBook.Text;

namespace RuleBook.Jobs.Reading;

/// <summary>
/// How much a job may hold: far more than any vehicle needs, and little enough that reading and judging it is a matter of milliseconds.
/// </summary>
internal static class JobBounds
{
    /// <summary>The most entries of a list: occupants, accessories, sizes on the placard.</summary>
    public const int LongestList = 100;

    /// <summary>The most keys that stand beside one another.</summary>
    public const int MostKeys = 500;

    /// <summary>Refuses a job that holds more.</summary>
    /// <exception cref="InputException">It does; the first place is told.</exception>
    public static void Check(Node node)
    {
        switch (node)
        {
            case Sequence { Items.Length: > LongestList } list:
                throw TooMany(list.Mark, $"the list has {list.Items.Length} entries, and a job's list has at most {LongestList}");
            case Mapping { Entries.Length: > MostKeys } keys:
                throw TooMany(keys.Mark, $"{keys.Entries.Length} keys stand here, and at most {MostKeys} may");
            case Sequence list:
                foreach (var item in list.Items)
                    Check(item);
                break;
            case Mapping keys:
                foreach (var (_, value) in keys.Entries)
                    Check(value);
                break;
        }
    }

    private static InputException TooMany(Mark mark, string text) =>
        new(Problem.Error("too-many", mark, text, "put what belongs together into one entry"));
}
