using System.Collections.Immutable;
using RuleBook.Jobs;
using RuleBook.Reading;
using RuleBook.Rules;

namespace RuleBook.Authoring.Cases;

/// <summary>Reads one case file: base vehicles, and cases that say what differs from one.</summary>
internal sealed class CaseReader(Book book, string jurisdiction, string topic, List<Problem> problems)
{
    private static readonly string[] NotToChange = ["registered-in", "on", "dates", "job"];

    public ImmutableArray<Case> Read(Node root)
    {
        var fields = new Fields(root, problems);
        var vehicles = fields.Node("vehicles") as Mapping ?? new Mapping([], fields.Mark);
        var cases = fields.List("cases", node => ReadCase(new Fields(node, problems), vehicles));
        fields.Done();
        return cases;
    }

    private Case? ReadCase(Fields fields, Mapping vehicles)
    {
        var (id, says) = (fields.Required("id"), fields.Required("says"));
        var written = ReadWritten(fields, vehicles);
        var expect = fields.Nested("expect");
        var because = fields.Nested("because");
        if (expect is null) fields.Missing("expect");
        if (because is null) fields.Missing("because");
        fields.Done();
        if (written is null || expect is null || because is null) return null;
        var (expectation, basis) = (ExpectationReader.Read(expect, book), ExpectationReader.ReadBecause(because, book, jurisdiction));
        return ReadJob(written) is { } job ? new Case(id, says, jurisdiction, topic, job, written, expectation, basis, fields.Mark) : null;
    }

    private Mapping? ReadWritten(Fields fields, Mapping vehicles)
    {
        var name = fields.Required("vehicle");
        if (vehicles.Find(name) is not Mapping vehicle)
        {
            string[] names = [.. vehicles.Entries.Select(entry => entry.Key.Text)];
            fields.Add("unknown-vehicle", fields.Node("vehicle")?.Mark ?? fields.Mark, $"'{name}' is not among the vehicles of this file", Spelling.Tip(name, names));
            return null;
        }

        var changes = fields.Node("changes") as Mapping ?? new Mapping([], fields.Mark);
        foreach (var (key, _) in changes.Entries.Where(entry => NotToChange.Contains(entry.Key.Text)))
            fields.Add("unknown-key", key.Mark, $"'{key.Text}' is not a change", "the folder gives the jurisdiction; 'on' or 'dates' stand beside 'changes'");
        var root = new Mapping([Entry("registered-in", new Scalar(jurisdiction, fields.Mark))], fields.Mark);
        foreach (var key in (string[])["on", "dates"])
            if (fields.Node(key) is { } day) root = root with { Entries = root.Entries.Add(Entry(key, day)) };
        root = root with { Entries = root.Entries.Add(Entry("vehicle", vehicle)) };
        return NodeMerge.Over(root, changes);
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
