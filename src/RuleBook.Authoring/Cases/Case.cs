using RuleBook.Jobs;
using RuleBook.Text;

namespace RuleBook.Authoring.Cases;

/// <summary>A job with the answer that a source gives for it.</summary>
/// <param name="Id">Stable, unique over all case files.</param>
/// <param name="Says">What it shows, in one sentence.</param>
/// <param name="Jurisdiction">Id of the jurisdiction of registration: the folder of the file.</param>
/// <param name="Topic">The topic: the name of the file.</param>
/// <param name="Job">The job, read.</param>
/// <param name="Written">The job as nodes, base vehicle and changes put together.</param>
/// <param name="Expect">The answer.</param>
/// <param name="Because">Where the answer is from.</param>
/// <param name="IsEdge">
/// An edge of the case that it stands under, whose reason it shares: the answer is derived from the figure beside it.
/// </param>
/// <param name="Mark">Where it is written.</param>
public sealed record Case(
    string Id,
    string Says,
    string Jurisdiction,
    string Topic,
    Job Job,
    Mapping Written,
    Expectation Expect,
    Because Because,
    bool IsEdge,
    Mark Mark
)
{
    /// <summary>Whether the answer is that the sources leave the pathway open.</summary>
    public bool LeavesOpen => Expect.Undecided || Expect.Between is { Decided: false };
}
