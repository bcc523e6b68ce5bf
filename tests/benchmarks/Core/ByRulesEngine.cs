using System.Globalization;
using RuleBook.Law;
using RuleBook.Tables;
using RulesEngine.Models;

namespace RuleBook.Benchmarks;

/// <summary>The lines as a workflow of the package RulesEngine.</summary>
internal sealed class ByRulesEngine
{
    private const string Name = "au-qld";

    private readonly RulesEngine.RulesEngine engine = new([
        new Workflow
        {
            WorkflowName = Name,
            Rules =
            [
                .. Line.All.Select(
                    (line, at) =>
                        new RulesEngine.Models.Rule
                        {
                            RuleName = at.ToString(CultureInfo.InvariantCulture),
                            Expression = line.When,
                            SuccessEvent = at.ToString(CultureInfo.InvariantCulture),
                        }
                ),
            ],
        },
    ]);

    public async ValueTask<Outcome> JudgeAsync(Job job)
    {
        var verdict = new Outcome(Pathway.NoCertificate, Pathway.NoCertificate);
        var results = await engine.ExecuteAllRulesAsync(Name, new RuleParameter("input1", job));
        for (var at = 0; at < results.Count; at++)
            if (results[at].IsSuccess)
                verdict = verdict.And(Line.All[at].Outcome);
        return verdict;
    }
}
