using System.Collections.Immutable;
using RuleBook.Facts;
using RuleBook.Law;
using RuleBook.Physics.Tyres;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Jobs.Reading;

/// <summary>Reads a job; everything wrong in it is reported with its place.</summary>
public static class JobReader
{
    /// <summary>Reads a job against the words of a book.</summary>
    /// <param name="root">The job as nodes.</param>
    /// <param name="book">The book whose vocabulary and jurisdictions the job uses.</param>
    /// <exception cref="InputException">The job cannot be read; every problem is listed.</exception>
    public static Job Read(Node root, Book book)
    {
        JobBounds.Check(root);
        var problems = new List<Problem>();
        var fields = new Fields(root, problems);
        var vehicle = fields.Nested("vehicle");
        var modification = fields.Nested("modification");
        var measured = fields.Nested("measured");
        var stated = new StatedMeasures(book.Vocabulary);

        if (vehicle is not null)
            ReadVehicle(vehicle, stated);
        if (modification is not null)
            ReadModification(modification, stated);
        if (measured is not null)
            stated.ReadAll(measured, "measured");
        if (fields.Nested("trailer") is { } trailer)
            stated.ReadAll(trailer, "trailer");
        var plan = PlanReader.Read(fields, vehicle, modification, measured, book);
        var (first, notYet) = vehicle is null ? (null, false) : ReadFirstRegistered(vehicle);

        var job = new Job
        {
            Written = root as Mapping,
            Name = fields.Text("job"),
            RegisteredIn = ReadJurisdiction(fields, book),
            Dates = ReadDates(fields),
            Words = ReadWords(vehicle, "vehicle.", book.Vocabulary).AddRange(ReadWords(modification, "modification.", book.Vocabulary)),
            Measures = stated.Known,
            Plan = plan,
            Unknown = modification?.IsUnknown("tyres") is true
                ? stated.Unknown.Union(Unstated.Of(book.Vocabulary).OfTyres)
                : stated.Unknown,
            PlacardTyres = vehicle?.IsUnknown("tyres") is false ? vehicle.List("tyres", node => ReadTyre(vehicle, node)) : [],
            FittedTyre = modification?.IsUnknown("tyres") is false
                ? modification.Read("tyres", node => ReadTyre(modification, node))
                : null,
            FirstRegistered = first,
            NotYetRegistered = notYet,
            Built = vehicle is null ? null : Built(vehicle),
            Shown = ReadShown(fields.Nested("shown"), book.Vocabulary),
            CertifierAppointedIn = ReadCertifier(fields.Nested("certifier")),
            Held = fields.List("held", node => ReadHeld(new Fields(node, problems), book)),
            TravelsThrough = fields.List("travels-through", node => KnownPlace(fields, node, book)),
        };
        vehicle?.Done();
        modification?.Done();
        measured?.Done();
        fields.Done();
        CheckAgreement(fields, modification, job);
        PlanChecks.Run(fields, vehicle, modification, measured, job, book.Vocabulary);
        Contradictions.Find(fields, vehicle, modification, job);
        Problem[] found =
        [
            .. problems
                .DistinctBy(problem => (problem.Code, problem.Mark, problem.Code == "negative" ? "" : problem.Text))
                .OrderBy(problem => problem.Mark),
        ];
        return found.All(problem => problem.Severity == Severity.Warning)
            ? job with
            {
                Warnings = [.. found],
            }
            : throw new InputException(found);
    }

    private static void ReadVehicle(Fields vehicle, StatedMeasures stated)
    {
        stated.ReadAll(vehicle, "vehicle");
        if (vehicle.Nested("ratings") is not { } ratings)
            return;
        stated.ReadAll(ratings, "vehicle.ratings");
    }

    private static void ReadModification(Fields modification, StatedMeasures stated)
    {
        stated.ReadAll(modification, "modification");
        if (modification.Nested("ratings") is not { } ratings)
            return;
        stated.ReadAll(ratings, "modification.ratings");
    }

    private static ImmutableDictionary<string, string> ReadWords(Fields? fields, string under, Vocabulary vocabulary)
    {
        var words = ImmutableDictionary.CreateBuilder<string, string>();
        if (fields is null)
            return words.ToImmutable();
        foreach (
            var fact in vocabulary.Facts.Values.Where(fact =>
                fact.Job.StartsWith(under, StringComparison.Ordinal) && fact.Name != JobFacts.Registered
            )
        )
        {
            var key = fact.Job[under.Length..];
            if (fields.IsUnknown(key))
                continue;
            if (fields.Word(key, fact.Values.AsSpan()) is { } word)
                words[fact.Name] = word;
        }

        return words.ToImmutable();
    }

    private static string ReadJurisdiction(Fields fields, Book book) =>
        fields.Node("registered-in") is { } node ? KnownPlace(fields, node, book) ?? "" : fields.Required("registered-in");

    private static string? KnownPlace(Fields fields, Node node, Book book)
    {
        if (fields.TextOf(node) is not { } id)
            return null;
        if (book.Jurisdiction(id) is { } jurisdiction)
            return jurisdiction.Id;
        fields.Add("unknown-jurisdiction", node.Mark, $"'{id}' is not a jurisdiction of the book", book.PlaceTip(id));
        return null;
    }

    private static JobDates ReadDates(Fields fields)
    {
        var on = fields.Day("on");
        if (fields.Nested("dates") is not { } dates)
        {
            if (!fields.Has("on"))
                fields.Add(
                    "missing-key",
                    fields.Mark,
                    "the job has no day",
                    "add 'on: 2026-11-25', or dates of work, certification and inspection"
                );
            return JobDates.On(on ?? DateOnly.MinValue);
        }

        if (fields.Has("on"))
            fields.Add("contradiction", dates.Mark, "the job gives both 'on' and 'dates'", "keep one of the two");
        var read = new JobDates(dates.Day("work"), dates.Day("certification"), dates.Day("inspection"));
        dates.Done();
        if (read is { Work: { } work, Certification: { } certification } && certification < work)
            fields.Add(
                "contradiction",
                dates.Mark,
                "certification comes before the work",
                "give the day of certification on or after that of the work"
            );
        if (read is { Work: { } done, Inspection: { } inspection } && inspection < done)
            fields.Add(
                "contradiction",
                dates.Mark,
                "the inspection comes before the work",
                "give the day of inspection on or after that of the work"
            );
        return read == new JobDates(null, null, null) ? JobDates.On(DateOnly.MinValue) : read;
    }

    private static PartialDate? Built(Fields vehicle) =>
        vehicle.Node("built") is Scalar { Text: "unknown" } ? null : vehicle.Partial("built");

    private static (PartialDate? First, bool NotYet) ReadFirstRegistered(Fields vehicle) =>
        vehicle.Node("first-registered") switch
        {
            null or Scalar { Text: "unknown" } => (null, false),
            Scalar { Text: "not-yet" } => (null, true),
            _ => (vehicle.Partial("first-registered"), false),
        };

    private static TyreSize? ReadTyre(Fields fields, Node node)
    {
        if (fields.TextOf(node) is not { } text)
            return null;
        if (TyreSize.TryParse(text, out var size, out var error))
            return size;
        fields.Add("not-a-tyre-size", node.Mark, error, "");
        return null;
    }

    private static ImmutableDictionary<string, bool> ReadShown(Fields? shown, Vocabulary vocabulary)
    {
        var read = ImmutableDictionary.CreateBuilder<string, bool>();
        if (shown is null)
            return read.ToImmutable();
        foreach (var (key, _) in shown.Entries)
            if (!vocabulary.Conditions.ContainsKey(key.Text))
                shown.Add(
                    "unknown-condition",
                    key.Mark,
                    $"'{key.Text}' is not a condition of the vocabulary",
                    ConditionTip(key.Text, vocabulary)
                );
            else if (shown.KnownYesNo(key.Text) is { } met)
                read[key.Text] = met;
        return read.ToImmutable();
    }

    /// <summary>An answer names conditions by their titles: <c>tyres foul nothing</c>.</summary>
    private static string ConditionTip(string written, Vocabulary vocabulary) =>
        vocabulary.Conditions.Values.FirstOrDefault(condition =>
            condition.Title.Replace(' ', '-').Equals(written.Replace(' ', '-'), StringComparison.OrdinalIgnoreCase)
        )
            is { } titled
            ? $"did you mean '{titled.Name}'?"
            : Spelling.Tip(written, [.. vocabulary.Conditions.Keys]);

    private static ImmutableArray<string>? ReadCertifier(Fields? certifier)
    {
        if (certifier is null)
            return null;
        var appointed = certifier.Texts("appointed-in");
        certifier.Text("name");
        certifier.Done();
        return appointed;
    }

    private static HeldPaper ReadHeld(Fields fields, Book book)
    {
        var issuedIn = fields.Node("issued-in") is { } node ? KnownPlace(fields, node, book) : fields.Required("issued-in");
        var paper = new HeldPaper(
            fields.Required("paper"),
            issuedIn ?? "",
            fields.Text("number"),
            fields.Partial("day"),
            fields.Texts("codes")
        );
        fields.Done();
        return paper;
    }

    private static void CheckAgreement(Fields fields, Fields? modification, Job job)
    {
        if (JobFacts.Contradiction(job) is { } contradiction)
            fields.Add(
                "contradiction",
                modification!.Node(FactSet.TyreGrowth)!.Mark,
                contradiction,
                "leave the growth out, or correct one of the two"
            );
    }
}
