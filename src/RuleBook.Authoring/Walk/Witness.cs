using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Fractions;
using RuleBook.Facts;
using RuleBook.Jobs;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Text;
using RuleBook.Units;
using RuleBook.Yaml;

namespace RuleBook.Authoring.Walk;

/// <summary>A point at which something shows, as facts and as a job that a person can run.</summary>
/// <param name="Jurisdiction">Where the vehicle is registered.</param>
/// <param name="Day">All three days, but for a day of the work among the measures.</param>
/// <param name="Words">Words about the vehicle.</param>
/// <param name="Measures">By measure, in base units.</param>
/// <param name="NotShown">Conditions known not to be met.</param>
public sealed record Witness(
    string Jurisdiction,
    DateOnly Day,
    ImmutableDictionary<string, string> Words,
    ImmutableArray<KeyValuePair<Measure, Fraction>> Measures,
    ImmutableArray<string> NotShown
)
{
    /// <summary>How much differs from a vehicle as built: fewer changes first, then smaller and rounder ones.</summary>
    internal Weight Weight =>
        new(
            Measures.Count(Changed) + NotShown.Length,
            Measures.Count(pair => !(pair.Value * 10).Reduce().Denominator.IsOne),
            Measures
                .Where(pair => !pair.Key.IsDate)
                .Aggregate(Fraction.Zero, (sum, pair) => sum + (pair.Value - (pair.Key.IfAbsent ?? Fraction.Zero)).Abs())
        );

    /// <summary>The same with every word about the vehicle stated, so that nothing is left to be asked.</summary>
    internal Witness Stated(Vocabulary vocabulary) =>
        this with
        {
            Words = vocabulary
                .Facts.Values.Where(fact =>
                    fact.Name != JobFacts.Registered
                    && fact.Job.StartsWith("vehicle.", StringComparison.Ordinal)
                    && !Words.ContainsKey(fact.Name)
                )
                .Aggregate(Words, (words, fact) => words.SetItem(fact.Name, fact.Values[0])),
        };

    /// <summary>Whether a job can say all of it: a measure that only follows from others cannot be stated.</summary>
    internal bool CanBeAJob => !Measures.Any(pair => pair.Key.IsDerived && Changed(pair));

    /// <summary>The job, in the keys of a job file; a measure that a job cannot state stands in a comment.</summary>
    internal string Yaml(Vocabulary vocabulary)
    {
        var text = new StringBuilder(YamlLines.Write(Nodes(vocabulary)));
        foreach (var (measure, value) in Measures.Where(pair => Changed(pair) && pair.Key.IsDerived))
            text.Append(CultureInfo.InvariantCulture, $"# {measure.Name}: {Shown(measure, value)}\n");
        return text.ToString();
    }

    /// <summary>The job as it is read from its file, without the measures that a job cannot state.</summary>
    internal Mapping Nodes(Vocabulary vocabulary)
    {
        var root = new Mapping([], new Mark("witness", 1, 1));
        root = NodeEdit.Set(root, "registered-in", Jurisdiction);
        string[] days = Measures.Any(pair => pair.Key.Name == JobFacts.Altered) ? ["dates.certification", "dates.inspection"] : ["on"];
        foreach (var day in days)
            root = NodeEdit.Set(root, day, Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        root = root with
        {
            Entries = root.Entries.Add(KeyValuePair.Create(new Scalar("vehicle", root.Mark), (Node)new Mapping([], root.Mark))),
        };
        foreach (var (fact, word) in Words.OrderBy(pair => pair.Key, StringComparer.Ordinal))
            root = NodeEdit.Set(
                root,
                vocabulary.Facts[fact].Job,
                fact != JobFacts.Registered ? word
                    : word == "no" ? "not-yet"
                    : "1990-01-01"
            );
        foreach (var (measure, value) in Measures.Where(pair => Changed(pair) && !pair.Key.IsDerived))
            root = NodeEdit.Set(root, measure.Job, Shown(measure, value));
        foreach (var condition in NotShown)
            root = NodeEdit.Set(root, $"shown.{condition}", "no");
        return root;
    }

    /// <summary>The job, read; null when a job cannot say it.</summary>
    /// <param name="book">The book whose words it uses.</param>
    internal Job? Job(Book book)
    {
        if (!CanBeAJob)
            return null;
        try
        {
            return JobReader.Read(Nodes(book.Vocabulary), book);
        }
        catch (InputException)
        {
            return null;
        }
    }

    private static bool Changed(KeyValuePair<Measure, Fraction> pair) => pair.Key.IfAbsent != pair.Value;

    private static string Shown(Measure measure, Fraction value) =>
        measure.IsDate
            ? DateOnly.FromDayNumber((int)value.ToDecimal()).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)
            : new Quantity(value / measure.Unit.ToBase, measure.Unit).ToString();
}

/// <summary>How much differs from a vehicle as built; the fewest changes are the least, then the roundest, then the smallest.</summary>
/// <param name="Changes">What is changed or not shown.</param>
/// <param name="Uneven">How many values are no whole tenths.</param>
/// <param name="Size">How far all values together are from as built.</param>
internal readonly record struct Weight(int Changes, int Uneven, Fraction Size) : IComparable<Weight>
{
    /// <inheritdoc/>
    public int CompareTo(Weight other) => (Changes, Uneven, Size).CompareTo((other.Changes, other.Uneven, other.Size));
}
