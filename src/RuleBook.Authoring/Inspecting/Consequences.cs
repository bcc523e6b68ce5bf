using System.Collections.Immutable;
using RuleBook.Text;

namespace RuleBook.Authoring.Inspecting;

/// <summary>Leaves out what follows from another problem on the same line, so that the first thing told is the one to mend.</summary>
internal static class Consequences
{
    /// <summary>What follows, from what.</summary>
    private static readonly ILookup<string, string> Causes = new (string Follows, string From)[]
    {
        ("coverage-lacks", "not-a-word"),
        ("coverage-missing", "wrong-shape"),
        ("empty-exception", "unknown-key"),
        ("empty-exception", "unknown-measure"),
        ("no-clause", "unknown-key"),
        ("registers-note", "not-a-word"),
        ("source-not-cited", "not-well-formed"),
        ("versions-gap", "wrong-start"),
        ("wrong-shape", "unknown-key"),
        ("wrong-start", "wrong-shape"),
    }.ToLookup(pair => pair.Follows, pair => pair.From);

    public static IEnumerable<Problem> Without(ImmutableArray<Problem> problems)
    {
        var onLine = problems.ToLookup(problem => (problem.Mark.File, problem.Mark.Line), problem => problem.Code);
        var meant = problems
            .Where(problem => problem.Code is "unknown-key" or "unknown-topic")
            .ToLookup(problem => (problem.Mark.File, problem.Tip));
        return problems.Where(problem =>
            !Causes[problem.Code].Any(onLine[(problem.Mark.File, problem.Mark.Line)].Contains)
            && !(
                (problem.Code is "missing-key" or "coverage-missing")
                && meant[(problem.Mark.File, Spelled(problem.Text))].Any(unknown => unknown.Mark >= problem.Mark)
            )
        );
    }

    /// <summary>The tip of the misspelt word that is found where this one is missing.</summary>
    private static string Spelled(string text) => $"did you mean {text[text.IndexOf('\'')..(text.LastIndexOf('\'') + 1)]}?";
}
