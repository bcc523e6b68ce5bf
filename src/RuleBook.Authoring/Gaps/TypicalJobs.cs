using System.Collections.Immutable;
using System.Globalization;
using RuleBook.Answers;
using RuleBook.Jobs;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Authoring.Gaps;

/// <summary>The fixed sample of jobs over which open documents are ranked.</summary>
public static class TypicalJobs
{
    private static readonly Sequence Written = Read();

    /// <summary>What is open in some jurisdictions, what decides most of these jobs first.</summary>
    /// <param name="book">The book.</param>
    /// <param name="day">The day as on which they are asked.</param>
    /// <param name="places">The jurisdictions.</param>
    public static ImmutableArray<OpenDocument> Rank(Book book, DateOnly day, IEnumerable<Jurisdiction> places) =>
        OpenDocuments.Of(book, day, places, place => Of(book, place, day));

    /// <summary>Those of a jurisdiction that registers vehicles, as on a day.</summary>
    /// <param name="book">The book.</param>
    /// <param name="place">The jurisdiction.</param>
    /// <param name="day">The day.</param>
    public static IEnumerable<Job> Of(Book book, Jurisdiction place, DateOnly day) =>
        from sample in Written.Items.OfType<Mapping>()
        where Nations(sample).Contains(place.Within ?? place.Id)
        from vehicle in Items(sample, "vehicles")
        from change in Items(sample, "changes")
        let job = Readable(Job(place, day, vehicle, change), book)
        where job is not null
        select job;

    /// <summary>Null where the book has other words than the sample.</summary>
    private static Job? Readable(Mapping job, Book book)
    {
        try
        {
            return JobReader.Read(job, book);
        }
        catch (InputException)
        {
            return null;
        }
    }

    private static Mapping Job(Jurisdiction place, DateOnly day, Mapping vehicle, Mapping change) =>
        new(
            [
                Entry("registered-in", place.Id),
                Entry("on", day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
                KeyValuePair.Create(new Scalar("vehicle", vehicle.Mark), (Node)vehicle),
                .. change.Entries,
            ],
            change.Mark
        );

    private static KeyValuePair<Scalar, Node> Entry(string key, string value) =>
        KeyValuePair.Create(new Scalar(key, Mark), (Node)new Scalar(value, Mark));

    private static Mark Mark => new("typical-jobs.yaml", 1, 1);

    private static IEnumerable<string> Nations(Mapping at) =>
        (at.Find("nation") is Sequence many ? many.Items : [at.Find("nation")!]).OfType<Scalar>().Select(one => one.Text);

    private static IEnumerable<Mapping> Items(Mapping at, string key) => ((Sequence)at.Find(key)!).Items.OfType<Mapping>();

    private static Sequence Read()
    {
        using var stream = typeof(TypicalJobs).Assembly.GetManifestResourceStream("typical-jobs.yaml")!;
        return (Sequence)YamlText.Read(stream, "typical-jobs.yaml");
    }
}
