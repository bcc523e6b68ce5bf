using System.Collections.Immutable;
using RuleBook.Answers;
using RuleBook.Authoring.Walk;
using RuleBook.Facts;
using RuleBook.Jobs;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Physics.Tyres;
using RuleBook.Tables;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Authoring.Changes;

/// <summary>A witness that the evaluator answers differently from two books.</summary>
/// <param name="Witness">The witness.</param>
/// <param name="Now">Its job.</param>
/// <param name="Asked">The job as the old book is asked.</param>
/// <param name="Before">The old answer.</param>
/// <param name="After">The new answer.</param>
/// <param name="Says">What the job changes on the vehicle.</param>
internal sealed record Confirmed(Witness Witness, Mapping Now, Mapping Asked, Outcome Before, Outcome After, string Says)
{
    /// <summary>The job file.</summary>
    public string Job => YamlLines.Write(Now);

    /// <summary>The job file as the old book is asked.</summary>
    public string Earlier => YamlLines.Write(Asked);

    public bool Decided => Before.Decided && After.Decided;
}

/// <summary>Runs the evaluator on witnesses; what the rules of one topic say alone is no answer yet.</summary>
/// <remarks>Given an eve, the old book is asked about that day and not about the witness's own.</remarks>
internal sealed class Confirmation(
    Book before,
    Book after,
    Jurisdiction old,
    Jurisdiction now,
    Topic topic,
    Vocabulary vocabulary,
    DateOnly? eve = null
)
{
    /// <summary>So many witnesses are tried with other words about the vehicle, where none shows a decided change.</summary>
    private const int Varied = 3;

    /// <summary>
    /// The first witness whose answer differs and is decided in both books; otherwise the first whose answer differs; null when none does.
    /// </summary>
    public Confirmed? First(CandidateGroup group, out bool tried)
    {
        Restated[] all = [.. group.Witnesses.Select(witness => Restated.Of(witness, vocabulary)).OfType<Restated>()];
        tried = all.Length > 0;
        Confirmed? open = null;
        foreach (var restated in all)
        {
            if (Try(restated, [restated.Witness.Stated(vocabulary)], _ => true) is not { } found)
                continue;
            if (found.Decided)
                return found;
            open ??= found;
        }

        if (eve is not null && open is not null)
            return open;
        foreach (var restated in all.Take(Varied))
            if (Try(restated, Others(restated), found => found.Decided || open is null) is { } found)
                return found;
        return open ?? (tried ? null : Tyres(group, ref tried));
    }

    /// <summary>The largest job that shows the same as the smallest; null when it is the smallest, or shows something else.</summary>
    public Confirmed? Furthest(CandidateGroup group, Confirmed smallest, DateOnly day)
    {
        if (group.Furthest is not { } witness || Restated.Of(witness with { Day = day }, vocabulary) is not { } restated)
            return null;
        var found = Try(restated, Others(restated).Prepend(restated.Witness.Stated(vocabulary)), each => Same(each, smallest));
        return found?.Says == smallest.Says ? null : found;
    }

    /// <summary>With another word for one of the facts of which the difference does not depend.</summary>
    private IEnumerable<Witness> Others(Restated restated)
    {
        var full = restated.Witness.Stated(vocabulary);
        return full
            .Words.Keys.Except(restated.Witness.Words.Keys)
            .Order(StringComparer.Ordinal)
            .SelectMany(fact =>
                vocabulary
                    .Facts[fact]
                    .Values.Where(word => word != full.Words[fact])
                    .Select(word => full with { Words = full.Words.SetItem(fact, word) })
            );
    }

    /// <summary>
    /// Where a job has to name a tyre size: those of the trade on a placard of one size, in the order in which the book lists them.
    /// </summary>
    private Confirmed? Tyres(CandidateGroup group, ref bool tried)
    {
        if (!vocabulary.Naming(topic.Name).Any(measure => measure.Name == FactSet.TyreGrowth))
            return null;
        var (witness, sizes) = (group.Witnesses[0] with { Measures = [], NotShown = [] }, after.Reference.TyreSizes);
        var placards = sizes.OrderBy(size => size.SectionWidth).Take(1).Select(size => size.Designation).Prepend(Restated.Placard);
        foreach (var (placard, fitted) in placards.SelectMany(placard => sizes.Select(size => (placard, size.Designation))))
        {
            var says = $"tyres {fitted} in place of {placard}";
            if (Judged(witness.Stated(vocabulary), placard, fitted, says) is not { } found)
                continue;
            tried = true;
            return Shortened(found, witness.Words.Keys, word => Judged(word, placard, fitted, says));
        }

        return null;
    }

    /// <summary>Without the words about the vehicle that the answers do not depend on.</summary>
    private static Confirmed Shortened(Confirmed best, IEnumerable<string> needed, Func<Witness, Confirmed?> judged)
    {
        foreach (var word in best.Witness.Words.Keys.Except(needed).Order(StringComparer.Ordinal))
            if (judged(best.Witness with { Words = best.Witness.Words.Remove(word) }) is { } shorter && Same(shorter, best))
                best = shorter;
        return best;
    }

    /// <summary>Without the measures that the answers do not depend on.</summary>
    private static Confirmed Lightened(Confirmed best, Func<Witness, Confirmed?> judged)
    {
        foreach (var measure in best.Witness.Measures)
            if (judged(best.Witness with { Measures = best.Witness.Measures.Remove(measure) }) is { } lighter && Same(lighter, best))
                best = lighter;
        return best;
    }

    /// <summary>
    /// With all words and the placard stated first, so that other rules ask for nothing; then without what does not matter.
    /// </summary>
    private Confirmed? Try(Restated restated, IEnumerable<Witness> stated, Func<Confirmed, bool> wanted)
    {
        var (own, placard) = (restated.Tyres ? Restated.Placard : null, Restated.Placard);
        var found = stated
            .Select(full => Judged(full, placard) ?? Judged(full, null))
            .FirstOrDefault(each => each is not null && wanted(each));
        if (found is null)
            return Judged(restated.Witness, own) is { } bare && wanted(bare) ? bare : null;
        if (own is null && Judged(found.Witness, null) is { } untyred && Same(untyred, found))
            (found, placard) = (untyred, null);
        return Shortened(
            eve is null ? found : Lightened(found, witness => Judged(witness, placard)),
            restated.Witness.Words.Keys,
            witness => Judged(witness, placard)
        );
    }

    private static bool Same(Confirmed left, Confirmed right) => left.Before == right.Before && left.After == right.After;

    private Confirmed? Judged(Witness witness, string? placard, string? fitted = null, string? says = null)
    {
        var job = Nodes(witness with { Jurisdiction = now.Id }, placard, fitted);
        if (Answer(after, now, job, job) is not { } later)
            return null;
        var asked = Nodes(witness with { Jurisdiction = old.Id, Day = eve ?? witness.Day }, placard, fitted);
        return Answer(before, old, asked, job) is { } earlier && earlier != later
            ? new Confirmed(witness, job, asked, earlier, later, says ?? WitnessWords.Of(witness, vocabulary))
            : null;
    }

    private Mapping Nodes(Witness witness, string? placard, string? fitted)
    {
        var job = witness.Nodes(vocabulary);
        if (placard is not null)
            job = job with { Entries = [.. job.Entries.Select(entry => entry.Key.Text == "vehicle" ? Placarded(entry, placard) : entry)] };
        return fitted is null ? job : NodeEdit.Set(job, "modification.tyres", fitted);
    }

    private static KeyValuePair<Scalar, Node> Placarded(KeyValuePair<Scalar, Node> vehicle, string placard)
    {
        var (keys, mark) = ((Mapping)vehicle.Value, vehicle.Value.Mark);
        var tyres = KeyValuePair.Create(new Scalar("tyres", mark), (Node)new Sequence([new Scalar(placard, mark)], mark));
        return KeyValuePair.Create(vehicle.Key, (Node)(keys with { Entries = keys.Entries.Insert(0, tyres) }));
    }

    /// <summary>The evaluator's answer; a job whose words the book does not have yet is read with those of the new book.</summary>
    private Outcome? Answer(Book book, Jurisdiction place, Node asked, Node renamed)
    {
        var job =
            Read(asked, book)
            ?? (ReferenceEquals(book, before) && Read(renamed, after) is { } read ? read with { RegisteredIn = place.Id } : null);
        if (job is null)
            return null;
        var judged = new Judgement(book, job, place, DiameterBasis.Handbook);
        if (!topic.OfUse)
            return judged.Outcome;
        var findings = judged
            .OfUse()
            .Where(finding => finding.Version.Rule.Topic == topic.Name)
            .Select(finding => finding.Outcome)
            .ToImmutableArray();
        return findings.IsEmpty
            ? new Outcome(Pathway.NoCertificate, Pathway.NoCertificate)
            : findings.Aggregate((left, right) => left.And(right));
    }

    private static Job? Read(Node asked, Book book)
    {
        try
        {
            return JobReader.Read(asked, book);
        }
        catch (InputException)
        {
            return null;
        }
    }
}
