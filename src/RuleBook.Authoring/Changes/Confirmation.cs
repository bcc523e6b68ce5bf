using System.Collections.Immutable;
using RuleBook.Authoring.Walk;
using RuleBook.Authoring.Yaml;
using RuleBook.Evaluation;
using RuleBook.Jobs;
using RuleBook.Reading;
using RuleBook.Rules;
using RuleBook.Tyres;

namespace RuleBook.Authoring.Changes;

/// <summary>A witness that the evaluator answers differently from two books.</summary>
/// <param name="Witness">The witness.</param>
/// <param name="Job">Its job file.</param>
/// <param name="Before">The old answer.</param>
/// <param name="After">The new answer.</param>
internal sealed record Confirmed(Witness Witness, string Job, Outcome Before, Outcome After)
{
    public bool Decided => Before.Decided && After.Decided;
}

/// <summary>Runs the evaluator on witnesses; what the rules of one topic say alone is no answer yet.</summary>
internal sealed class Confirmation(Book before, Book after, Jurisdiction old, Jurisdiction now, Topic topic, Vocabulary vocabulary)
{
    /// <summary>
    /// The first witness whose answer differs and is decided in both books; otherwise the first whose answer differs; null when none does.
    /// </summary>
    public Confirmed? First(CandidateGroup group, out bool tried)
    {
        tried = false;
        Confirmed? open = null;
        foreach (var witness in group.Witnesses)
        {
            if (Restated.Of(witness, vocabulary) is not { } restated) continue;
            tried = true;
            if (Try(restated) is not { } found) continue;
            if (found.Decided) return found;
            open ??= found;
        }

        return open;
    }

    /// <summary>With all words and the placard stated first, so that other rules ask for nothing; then without what does not matter.</summary>
    private Confirmed? Try(Restated restated)
    {
        var full = restated.Witness.Stated(vocabulary);
        var best = Judged(full, tyres: true) ?? Judged(full, tyres: false) ?? Judged(restated.Witness, restated.Tyres);
        if (best is null) return null;
        var tyres = best.Job.Contains(Restated.Placard, StringComparison.Ordinal);
        if (tyres && !restated.Tyres && Judged(best.Witness, tyres: false) is { } bare && Same(bare, best)) (best, tyres) = (bare, false);
        foreach (var word in best.Witness.Words.Keys.Except(restated.Witness.Words.Keys).Order(StringComparer.Ordinal))
            if (Judged(best.Witness with { Words = best.Witness.Words.Remove(word) }, tyres) is { } shorter && Same(shorter, best)) best = shorter;
        return best;
    }

    private static bool Same(Confirmed left, Confirmed right) => left.Before == right.Before && left.After == right.After;

    private Confirmed? Judged(Witness witness, bool tyres)
    {
        var job = Text(witness with { Jurisdiction = now.Id }, tyres);
        return Answer(after, now, job, job) is { } new1 && Answer(before, old, Text(witness with { Jurisdiction = old.Id }, tyres), job) is { } old1 && old1 != new1
            ? new Confirmed(witness, job, old1, new1)
            : null;
    }

    private string Text(Witness witness, bool tyres)
    {
        var text = witness.Yaml(vocabulary);
        return tyres ? text.Replace("vehicle:\n", $"vehicle:\n  tyres: [{Restated.Placard}]\n", StringComparison.Ordinal) : text;
    }

    /// <summary>The evaluator's answer; a job whose words the book does not have yet is read with those of the new book.</summary>
    private Outcome? Answer(Book book, Jurisdiction place, string text, string renamed)
    {
        var job = Read(text, book) ?? (ReferenceEquals(book, before) && Read(renamed, after) is { } read ? read with { RegisteredIn = place.Id } : null);
        if (job is null) return null;
        var inquiry = Inquiry.Open(book, job, place, DiameterBasis.Handbook);
        if (!topic.OfUse) return inquiry.Judge().Outcome;
        var findings = inquiry.OfUse(job).Where(finding => finding.Version.Rule.Topic == topic.Name).Select(finding => finding.Outcome).ToImmutableArray();
        return findings.IsEmpty ? new Outcome(Pathway.NoCertificate, Pathway.NoCertificate) : findings.Aggregate((left, right) => left.And(right));
    }

    private static Job? Read(string text, Book book)
    {
        try
        {
            return JobReader.Read(YamlText.Read(text, "witness"), book);
        }
        catch (InputException)
        {
            return null;
        }
    }
}
