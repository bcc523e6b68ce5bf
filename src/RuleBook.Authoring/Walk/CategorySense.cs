using System.Collections.Immutable;
using Fractions;
using RuleBook.InForce;
using RuleBook.Law;

namespace RuleBook.Authoring.Walk;

/// <summary>
/// Which categories and GVM after re-rating can stand together: a job is judged by the category that the new GVM leads to, so that no
/// vehicle is of a category whose bounds it has left.
/// </summary>
internal sealed class CategorySense
{
    private readonly int axis;
    private readonly ImmutableDictionary<string, ImmutableArray<CategoryGvm>> classes;

    /// <param name="vocabulary">The words of the book.</param>
    /// <param name="axes">The measures of the points.</param>
    /// <param name="versions">What the words are tested by.</param>
    public CategorySense(Vocabulary vocabulary, Axes axes, IReadOnlyList<ResolvedVersion> versions)
    {
        axis = Enumerable.Range(0, axes.Measures.Length).FirstOrDefault(i => axes.Measures[i].Name == KnownWords.NewGvm, -1);
        classes =
            axis < 0 || !vocabulary.Facts.TryGetValue(KnownWords.Category, out var category)
                ? ImmutableDictionary<string, ImmutableArray<CategoryGvm>>.Empty
                : WordClasses
                    .Classes(category, [.. WordClasses.Tests(versions).Where(test => test.Fact == KnownWords.Category)])
                    .Where(same => same.All(word => vocabulary.CategoryGvms.TryGetValue(word, out var gvm) && !gvm.Assumed))
                    .ToImmutableDictionary(same => same[0], same => same.Select(word => vocabulary.CategoryGvms[word]).ToImmutableArray());
    }

    /// <summary>Whether some vehicle has both.</summary>
    public bool Possible(ImmutableDictionary<string, string> words, Fraction[] point) =>
        !words.TryGetValue(KnownWords.Category, out var category)
        || !classes.TryGetValue(category, out var bounds)
        || bounds.Any(gvm => !(point[axis] <= gvm.Over) && !(point[axis] > gvm.AtMost));
}
