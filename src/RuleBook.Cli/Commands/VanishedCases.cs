using System.Text;
using RuleBook.Authoring.Books;
using RuleBook.Authoring.Changes;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Cli.Commands;

/// <summary>The cases of the old book whose id the new one does not have: an id names one case for ever.</summary>
internal static class VanishedCases
{
    private const int MostTold = 4;

    /// <summary>At most one remark; none where a book keeps no cases.</summary>
    /// <param name="before">The case files of the old book.</param>
    /// <param name="after">Those of the new one.</param>
    public static IEnumerable<Remark> Of(IReadOnlyList<BookBytes> before, IReadOnlyList<BookBytes> after)
    {
        var kept = after.SelectMany(Ids).Select(id => id.Text).ToHashSet();
        Scalar[] gone = kept.Count == 0 ? [] : [.. before.SelectMany(Ids).Where(id => !kept.Contains(id.Text))];
        if (gone.Length == 0)
            yield break;
        var more = gone.Length > MostTold ? $" and {gone.Length - MostTold} more" : "";
        yield return new Remark(
            RemarkKind.Other,
            null,
            "The cases",
            "ids of cases",
            null,
            $"only the old book has {string.Join(", ", gone.Take(MostTold).Select(id => id.Text))}{more}: nothing says what became "
                + "of what they held",
            gone[0].Mark
        );
    }

    /// <summary>What cannot be read is told where the cases are run.</summary>
    private static IEnumerable<Scalar> Ids(BookBytes file)
    {
        try
        {
            return
                YamlText.Read(Encoding.UTF8.GetString(file.Content.Span), file.Path) is Mapping root && root.Find("cases") is Sequence cases
                ? [.. cases.Items.OfType<Mapping>().Select(one => one.Find("id")).OfType<Scalar>()]
                : [];
        }
        catch (InputException)
        {
            return [];
        }
    }
}
