using System.Collections.Immutable;
using RuleBook.Jobs;
using RuleBook.Law;

namespace RuleBook.Answers;

/// <summary>A place on whose roads the vehicle will be used, and what is known of the rules of use that follow the road there.</summary>
/// <param name="Jurisdiction">Its id.</param>
/// <param name="Name">Its name.</param>
/// <param name="Looked">Whether anybody has looked for such rules there.</param>
/// <param name="Rules">The rules of the book that follow its roads, whether or not they bind this job.</param>
public sealed record RoadElsewhere(string Jurisdiction, string Name, bool Looked, ImmutableArray<Rule> Rules)
{
    /// <summary>The places that the job travels through, each once, the state of registration left out.</summary>
    internal static ImmutableArray<RoadElsewhere> Of(Book book, Job job, Jurisdiction place) =>
        [
            .. job
                .TravelsThrough.Select(book.Jurisdiction)
                .OfType<Jurisdiction>()
                .Where(there => there.Id != place.Id)
                .DistinctBy(there => there.Id)
                .Select(there => new RoadElsewhere(
                    there.Id,
                    there.Name,
                    there.Coverage.Any(each => each.State != "none" && book.Vocabulary.Topics.GetValueOrDefault(each.Topic)?.OfUse == true),
                    [.. there.Rules.Where(rule => rule.GovernedByTravel)]
                )),
        ];
}
