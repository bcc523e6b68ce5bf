using System.Collections.Immutable;
using System.Globalization;
using RuleBook.Authoring.Walk;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Tables;

namespace RuleBook.Authoring.Tests.Proof;

/// <summary>
/// The decision tables give what the rules say: over random jobs before the rules of every jurisdiction, and before random rules.
/// RULEBOOK_RANDOM_JOBS sets how many, RULEBOOK_RANDOM_SEED where to begin. A job on which the two disagree is made as small as it can be
/// and told as a job file.
/// </summary>
public sealed class ProofTests
{
    private const int MostWorlds = 400;
    private const int JobsABook = 12;

    private static readonly int Jobs = Number("RULEBOOK_RANDOM_JOBS", 300);
    private static readonly int Seed = Number("RULEBOOK_RANDOM_SEED", 20_261_127);

    [Fact]
    public void On_random_jobs_the_tables_give_what_the_rules_of_every_jurisdiction_say()
    {
        for (var at = 0; at < Jobs; at++)
        {
            var random = new Random(unchecked(Seed + at));
            var place = TestBook.Book.Jurisdictions[random.Next(TestBook.Book.Jurisdictions.Length)];
            Agree(TestBook.Book, place, new DateOnly(2003, 1, 1).AddDays(random.Next(9_000)), random, at);
        }
    }

    [Fact]
    public void On_random_jobs_the_tables_give_what_random_rules_say()
    {
        for (var at = 0; at < Jobs / JobsABook; at++)
        {
            var random = new Random(unchecked(Seed + at));
            var book = RandomBook.Of(random);
            for (var job = 0; job < JobsABook; job++)
                Agree(book, book.Jurisdictions[0], new DateOnly(2026, 1, 1), random, at);
        }
    }

    private static void Agree(Book book, Jurisdiction place, DateOnly day, Random random, int at)
    {
        var rules = place
            .Rules.Where(rule => !book.Vocabulary.Topics[rule.Topic].OfUse)
            .OrderBy(rule => rule.Id, StringComparer.Ordinal)
            .Select(rule => Resolver.Resolve(book, rule, day))
            .ToImmutableArray();
        var facts = new RandomFacts(book.Vocabulary, rules, random).Facts;
        if (Disagreement(book, place, day, rules, facts) is null)
            return;
        facts = Shrink(facts, smaller => Disagreement(book, place, day, rules, smaller) is not null);
        Assert.Fail(
            $"{Disagreement(book, place, day, rules, facts)}\nRULEBOOK_RANDOM_SEED={unchecked(Seed + at)} "
                + $"RULEBOOK_RANDOM_JOBS={JobsABook}\n{JobFile(book.Vocabulary, place, day, facts)}"
        );
    }

    private static string? Disagreement(
        Book book,
        Jurisdiction place,
        DateOnly day,
        ImmutableArray<ImmutableArray<ResolvedVersion>> rules,
        FactSet facts
    )
    {
        var table = TableBook.Of(book).Table(place.Id, day);
        var row = table.NewRow();
        row.Set(facts);
        var (walked, lookedUp, completed) = (table.Judge(row.Cells, row.Touched), table.Judge(row), table.Complete(row));

        var interpreter = new Interpreter(book.Vocabulary, rules);
        var topics = interpreter.Touched(facts);
        var worlds = new Worlds(book.Vocabulary, rules, facts, topics);
        var few = worlds.Count <= MostWorlds;
        var random = new Random(Seed);
        var tried = few ? worlds.All() : Enumerable.Range(0, MostWorlds / 8).Select(_ => worlds.Any(random));
        var said = tried.Select(world => interpreter.Verdict(world, topics)).Aggregate((left, right) => left.Or(right));

        if (!Covers(completed, said))
            return $"the rules give {said}, the table no more than {completed}";
        if (lookedUp != walked)
            return $"one walk of the table gives {walked}, looked up is {lookedUp}";
        if (!Covers(walked, completed))
            return $"one walk of the table gives {walked}, its completion {completed}";
        return few && worlds.IsComplete && completed != said ? $"the rules give no more than {said}, the table {completed}" : null;
    }

    private static bool Covers(Outcome wide, Outcome narrow) => wide.Best <= narrow.Best && wide.Worst >= narrow.Worst;

    /// <summary>Takes out what is not needed for the two to disagree.</summary>
    private static FactSet Shrink(FactSet facts, Func<FactSet, bool> disagree)
    {
        foreach (
            var smaller in facts
                .Words.Keys.Select(name => facts with { Words = facts.Words.Remove(name) })
                .Concat(facts.Measures.Keys.Select(name => facts.Without(name)))
                .Concat(facts.Shown.Keys.Select(name => facts with { Shown = facts.Shown.Remove(name) }))
        )
            if (disagree(smaller))
                return Shrink(smaller, disagree);
        return facts;
    }

    private static string JobFile(Vocabulary vocabulary, Jurisdiction place, DateOnly day, FactSet facts)
    {
        var known = facts.Measures.ToLookup(pair => pair.Value.Value.Exact is not null);
        var job = new Witness(
            place.Id,
            day,
            facts.Words,
            [.. known[true].Select(pair => KeyValuePair.Create(vocabulary.Measures[pair.Key], pair.Value.Value.Exact!.Value))],
            [.. facts.Shown.Where(pair => !pair.Value).Select(pair => pair.Key)]
        );
        return string.Join(
            '\n',
            known[false]
                .Select(pair => $"# {pair.Key} from {pair.Value.Value.Low} to {pair.Value.Value.High}")
                .Prepend(job.Yaml(vocabulary))
        );
    }

    private static int Number(string name, int usual) =>
        int.TryParse(Environment.GetEnvironmentVariable(name), CultureInfo.InvariantCulture, out var number) ? number : usual;
}
