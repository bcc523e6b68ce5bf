using System.Collections.Immutable;
using RuleBook.Jobs;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Cases;

/// <summary>Reads one case file: base vehicles, and cases that say what differs from one.</summary>
internal sealed class CaseReader(Book book, string jurisdiction, string topic, List<Problem> problems)
{
    private static readonly string[] NotToChange = ["registered-in", "on", "dates", "job"];

    public ImmutableArray<Case> Read(Node root)
    {
        var fields = new Fields(root, problems);
        var vehicles = fields.Node("vehicles") as Mapping ?? new Mapping([], fields.Mark);
        var cases = fields.List("cases", node => node).SelectMany(node => ReadParts(node, vehicles)).ToImmutableArray();
        fields.Done();
        return cases;
    }

    private IEnumerable<Case> ReadParts(Node node, Mapping vehicles)
    {
        (CasePart Part, Fields Fields)[] parts = [.. CasePart.Of(node, problems).Select(part => (part, new Fields(part.Keys, problems)))];
        (CasePart Part, Fields Fields, CaseSpread Spread)[] all =
        [
            .. parts.Select(each => (each.Part, each.Fields, CaseSpread.Of(each.Fields))),
        ];
        if (all.Sum(each => (long)each.Spread.Count) <= CaseSpread.Most)
            return all.SelectMany(each => ReadPart(each.Part, each.Fields, each.Spread, vehicles));
        problems.Add(
            Problem.Error(
                "too-many-cases",
                node.Mark,
                $"this stands for more than {CaseSpread.Most} cases",
                "give fewer values, or several cases"
            )
        );
        return [];
    }

    private IEnumerable<Case> ReadPart(CasePart part, Fields fields, CaseSpread spread, Mapping vehicles)
    {
        fields.Node("id");
        fields.Node("then");
        var says = fields.Required("says");
        var written = ReadWritten(fields, spread, vehicles);
        var expect = fields.Nested("expect");
        var because = fields.Nested("because");
        if (expect is null)
            fields.Missing("expect");
        if (because is null)
            fields.Missing("because");
        fields.Done();
        if (written is null || expect is null || because is null)
            return [];
        var (expectation, basis) = (
            ExpectationReader.Read(expect, book, $"{jurisdiction}/{topic}"),
            ExpectationReader.ReadBecause(because, book, jurisdiction)
        );
        return spread
            .Over(written)
            .SelectMany(one =>
                ReadJob(one.Job) is { } job
                    ? (Case[])
                        [
                            new Case(
                                part.Id + one.Suffix,
                                says,
                                jurisdiction,
                                topic,
                                job,
                                one.Job,
                                expectation,
                                basis,
                                part.IsEdge,
                                part.Mark
                            ),
                        ]
                    : []
            );
    }

    private Mapping? ReadWritten(Fields fields, CaseSpread spread, Mapping vehicles)
    {
        var name = fields.Required("vehicle");
        var changes = fields.Node("changes") as Mapping ?? new Mapping([], fields.Mark);
        var (day, dates) = (fields.Node("on"), fields.Node("dates"));
        foreach (var (key, _) in changes.Entries)
            MayChange(fields, key, key.Text);
        foreach (var axis in spread.Axes)
        {
            MayChange(fields, axis.Path, axis.Root);
            if (axis.In(changes) is { } twice)
                fields.Add(
                    "contradiction",
                    twice.Mark,
                    $"'{axis.Path.Text}' is changed here and has values under 'each'",
                    "keep one of the two"
                );
        }

        if (vehicles.Find(name) is not Mapping vehicle)
        {
            string[] names = [.. vehicles.Entries.Select(entry => entry.Key.Text)];
            fields.Add(
                "unknown-vehicle",
                fields.Node("vehicle")?.Mark ?? fields.Mark,
                $"'{name}' is not among the vehicles of this file",
                Spelling.Tip(name, names)
            );
            return null;
        }

        var root = new Mapping([Entry("registered-in", new Scalar(jurisdiction, fields.Mark))], fields.Mark);
        if (day is not null)
            root = root with { Entries = root.Entries.Add(Entry("on", day)) };
        if (dates is not null)
            root = root with { Entries = root.Entries.Add(Entry("dates", dates)) };
        return NodeMerge.Over(root with { Entries = root.Entries.Add(Entry("vehicle", vehicle)) }, changes);
    }

    private static void MayChange(Fields fields, Scalar key, string root)
    {
        if (NotToChange.Contains(root))
            fields.Add(
                "unknown-key",
                key.Mark,
                $"'{key.Text}' is not a change",
                "the folder gives the jurisdiction; 'on' or 'dates' stand beside 'changes'"
            );
    }

    private Job? ReadJob(Mapping written)
    {
        try
        {
            return JobReader.Read(written, book);
        }
        catch (InputException refused)
        {
            problems.AddRange(refused.Problems);
            return null;
        }
    }

    private static KeyValuePair<Scalar, Node> Entry(string key, Node value) => KeyValuePair.Create(new Scalar(key, value.Mark), value);
}
