using System.Globalization;
using CsCheck;
using RuleBook.Answers;
using RuleBook.Authoring.Tests.Books;
using RuleBook.Jobs.Reading;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Authoring.Tests.Figures;

/// <summary>
/// A remedy keeps its promise on the real book, and no smaller change of the same kind does. Basis: the project's own promise, no law.
/// RULEBOOK_RANDOM_JOBS sets how many jobs are tried; a failure prints its seed.
/// </summary>
public sealed class RemedyProperties
{
    private static readonly long Tries = long.TryParse(
        Environment.GetEnvironmentVariable("RULEBOOK_RANDOM_JOBS"),
        CultureInfo.InvariantCulture,
        out var tries
    )
        ? tries
        : 25;

    [Fact]
    public void A_proposed_change_typed_into_the_job_gives_what_it_promises_and_a_hair_less_does_not()
    {
        var proposed = 0L;
        RandomJob
            .Jobs.Select(job => job.WithoutRatings())
            .Sample(
                random =>
                {
                    Mapping written;
                    Assessment now;
                    RuleBook.Jobs.Job job;
                    try
                    {
                        written = (Mapping)YamlText.Read(random.ToString(), "job");
                        job = JobReader.Read(written, TestBook.Book);
                        now = Assessor.Assess(TestBook.Book, job);
                    }
                    catch (InputException)
                    {
                        return;
                    }

                    foreach (var remedy in Remedies.Find(TestBook.Book, job, null, now))
                    {
                        proposed++;
                        remedy.Goal.IsReachedBy(now).ShouldBeFalse(random.ToString());
                        if (remedy.Changes is not [{ To: { } to, Path: not "modification.accessories" and not "on" } change])
                            continue;
                        remedy
                            .Goal.IsReachedBy(RealBook.Assess(random.With(change.Path, to).ToString()))
                            .ShouldBeTrue($"{change.Path}: {to} in\n{random}");
                        if (change.Lever is not (RemedyLever.SuspensionLift or RemedyLever.BodyLift) || to is "0 mm")
                            continue;
                        var sign = to.StartsWith('-') ? "-" : "";
                        var beyond = decimal.Parse(to.Split(' ')[0].TrimStart('-'), CultureInfo.InvariantCulture) + 1.001m;
                        var less = string.Create(CultureInfo.InvariantCulture, $"{sign}{beyond} mm");
                        if (change.Cost!.Value > 2)
                            remedy
                                .Goal.IsReachedBy(RealBook.Assess(random.With(change.Path, less).ToString()))
                                .ShouldBeFalse($"{change.Path}: {less} in\n{random}");
                    }
                },
                iter: Tries,
                threads: 1
            );
        proposed.ShouldBeGreaterThan(0);
    }
}
