using System.Collections.Immutable;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Cli.Fleets;

/// <summary>
/// Which columns of a fleet are keys of a job: the header is the key's path (<c>vehicle.category</c>). Any other column is passed through.
/// </summary>
internal sealed class FleetColumns
{
    private static readonly string[] Single = ["job", "registered-in", "on"];
    private static readonly string[] Groups = ["dates", "vehicle", "modification", "measured", "trailer", "shown", "certifier"];
    private static readonly string[] Lists = ["vehicle.tyres", "travels-through", "certifier.appointed-in"];

    private readonly string file;
    private readonly int line;
    private readonly ImmutableArray<bool> isKey;

    /// <exception cref="InputException">A header is missing, stands twice or cannot stand beside another.</exception>
    public FleetColumns(string file, IReadOnlyList<string> header, int line = 1)
    {
        (this.file, this.line) = (file, line);
        Header = [.. header.Select(name => name.Trim())];
        isKey = [.. Header.Select(IsKey)];
        var seen = new HashSet<string>(StringComparer.Ordinal);
        for (var at = 0; at < Header.Length; at++)
        {
            var (name, mark) = (Header[at], new Mark(file, line, at + 1));
            if (!seen.Add(name))
                throw Refused("duplicate-key", mark, $"the column '{name}' stands twice", "keep one of the two");
            if (Answered.Columns.Contains(name) || name == Answered.Before)
                throw Refused("duplicate-key", mark, $"the column '{name}' is one that the answer has", "rename it or take it out");
        }

        Asked = [.. Enumerable.Range(0, Header.Length).Where(at => isKey[at] && Header[at] != "job")];
        if (!Header.Contains("registered-in"))
            throw Refused(
                "missing-key",
                new Mark(file, line, 1),
                "no column is headed 'registered-in'",
                $"{Spelling.NearestTip("registered-in", Header)} 'fleet --template' writes a header".Trim()
            );
    }

    /// <summary>The headers in written order.</summary>
    public ImmutableArray<string> Header { get; }

    /// <summary>The columns that are no keys of a job.</summary>
    public IEnumerable<string> PassedThrough => Header.Where((_, at) => !isKey[at]);

    /// <summary>The columns that decide the answer to a row: all that are keys but the job's name.</summary>
    public ImmutableArray<int> Asked { get; }

    /// <summary>Looks whether a job has each key, and whether what is passed through was to be one: no cell of it would be read.</summary>
    /// <exception cref="InputException">A header is to be written otherwise.</exception>
    public void Check(Book book)
    {
        string[] known =
        [
            .. Single,
            .. Lists,
            .. book.Vocabulary.Measures.Values.Select(measure => measure.Job).OfType<string>(),
            .. book.Vocabulary.Facts.Values.Select(fact => fact.Job),
        ];
        var unknown = Unknown(book).ToLookup(problem => problem.Mark.Column);
        for (var at = 0; at < Header.Length; at++)
        {
            var (name, wrong) = (Header[at], unknown[at + 1].FirstOrDefault());
            if (isKey[at] && wrong is null)
                continue;
            if (known.Where(key => IsMeant(key, name)).Distinct().ToArray() is [_, ..] meant)
                throw Refused(
                    "unknown-key",
                    new Mark(file, line, at + 1),
                    $"'{name}' is not a key of a job",
                    $"if it is meant, head it '{string.Join("' or '", meant)}', with units in the cells; "
                        + "a column of your own needs another name"
                );
            if (wrong is not null)
                throw new InputException(wrong);
        }
    }

    /// <summary>The cells of <see cref="Asked"/> as one text.</summary>
    public string Combination(FleetRow row) => string.Concat(Asked.Select(at => row.Cells[at] + '\0'));

    /// <summary>The row as a job; an empty cell states nothing. A mark's column is the number of the cell.</summary>
    public Mapping Job(FleetRow row)
    {
        var job = new Mapping([], new Mark(file, row.Line, 1));
        for (var at = 0; at < Header.Length; at++)
            if (isKey[at] && row.Cells[at].Trim() is { Length: > 0 } text)
                job = With(job, Header[at].Split('.'), Value(Header[at], text, new Mark(file, row.Line, at + 1)));
        return job;
    }

    /// <summary>What a job says of keys that it does not have.</summary>
    private IEnumerable<Problem> Unknown(Book book)
    {
        try
        {
            JobReader.Read(Job(new FleetRow(0, 1, [.. Header.Select(_ => "?")], null)), book);
            return [];
        }
        catch (InputException refused)
        {
            return refused.Problems.Where(problem => problem.Code is "unknown-key" or "unknown-condition");
        }
    }

    /// <summary>
    /// Whether a header is a key or the end of one, but for capitals, hyphens and what stands in brackets (<c>Body lift [mm]</c>).
    /// </summary>
    private static bool IsMeant(string key, string header) =>
        header.Split('(', '[')[0].Trim().ToLowerInvariant().Replace(' ', '-').Replace('_', '-') is var plain
        && plain.Length > 0
        && (key == plain || key.EndsWith($".{plain}", StringComparison.Ordinal));

    private static bool IsKey(string name) =>
        Single.Contains(name)
        || Lists.Contains(name)
        || (name.Split('.') is { Length: 2 or 3 } parts && Groups.Contains(parts[0]) && parts.All(part => part.Length > 0));

    /// <summary>Placard sizes and other lists stand in one cell, parted by semicolons.</summary>
    private static Node Value(string path, string text, Mark mark) =>
        Lists.Contains(path)
            ? new Sequence(
                [
                    .. text.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
                        .Select(item => new Scalar(item, mark)),
                ],
                mark
            )
            : new Scalar(text, mark);

    private static Mapping With(Mapping into, ReadOnlySpan<string> path, Node value)
    {
        var key = path[0];
        var inner = path.Length == 1 ? value : With(into.Find(key) as Mapping ?? new Mapping([], value.Mark), path[1..], value);
        var entry = KeyValuePair.Create(new Scalar(key, value.Mark), inner);
        var known = into.Entries.FirstOrDefault(each => each.Key.Text == key);
        return into with
        {
            Entries = known.Key is null ? into.Entries.Add(entry) : into.Entries.Replace(known, KeyValuePair.Create(known.Key, inner)),
        };
    }

    private static InputException Refused(string code, Mark mark, string text, string tip) => new(Problem.Error(code, mark, text, tip));
}
