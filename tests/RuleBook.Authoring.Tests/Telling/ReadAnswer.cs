using System.Globalization;
using System.Text.RegularExpressions;
using RuleBook.Answers;
using RuleBook.Telling;
using RuleBook.Tests.Telling;

namespace RuleBook.Authoring.Tests.Telling;

/// <summary>A whole answer read back from its text into facts; it knows the words of answers and nothing of how they are written.</summary>
internal sealed record ReadAnswer(string[] First, ReadPart[] Parts)
{
    public static ReadAnswer Of(Assessment answer)
    {
        var page = new Told();
        new AssessmentText(page).Write(answer);
        var parts = new List<ReadPart> { new("", []) };
        foreach (var line in page.Lines)
            if (line.EndsWith(':') && !line.StartsWith(' '))
                parts.Add(new ReadPart(line[..^1], []));
            else
                parts[^1].Lines.Add(line);
        return new ReadAnswer([.. parts[0].Lines], [.. parts.Skip(1)]);
    }

    /// <summary>The part with this heading; a part without lines where nothing of it is told.</summary>
    public ReadPart Part(string heading) =>
        Parts.FirstOrDefault(part => part.Heading.StartsWith(heading, StringComparison.Ordinal)) ?? new ReadPart(heading, []);
}

/// <summary>What stands under one heading.</summary>
internal sealed partial record ReadPart(string Heading, List<string> Lines)
{
    /// <summary>The items with their mark.</summary>
    public (string Mark, string Text)[] Items =>
        [
            .. Lines
                .Select(line => Item().Match(line))
                .Where(read => read.Success)
                .Select(read => (read.Groups["mark"].Value, read.Groups["text"].Value)),
        ];

    /// <summary>Limits of a law: <c>suspension lift 45 mm, limit 50 mm: 5 mm left</c>.</summary>
    public IEnumerable<ReadLimit> Limits =>
        Items
            .Select(item => (item.Mark, Match: Law().Match(item.Text)))
            .Where(read => read.Match.Success)
            .Select(read => new ReadLimit(
                read.Mark,
                read.Match.Groups["measure"].Value,
                Number(read.Match.Groups["value"]),
                Number(read.Match.Groups["apart"]),
                read.Match.Groups["side"].Value
            ));

    /// <summary>Limits of a load: <c>vehicle against its GVM: 3521.8 of 3500 kg, 21.8 kg too much</c>.</summary>
    public IEnumerable<ReadLoad> Loads =>
        Items
            .Select(item => (item.Mark, Match: Load().Match(item.Text)))
            .Where(read => read.Match.Success)
            .Select(read => new ReadLoad(
                read.Mark,
                read.Match.Groups["what"].Value,
                Number(read.Match.Groups["value"]),
                Number(read.Match.Groups["limit"]),
                Number(read.Match.Groups["apart"]),
                read.Match.Groups["side"].Value
            ));

    private static decimal Number(Group group) => group.Success ? decimal.Parse(group.Value, CultureInfo.InvariantCulture) : 0;

    [GeneratedRegex(@"^(?<mark>ok|x|-|\?|!) +(?<text>.+)$")]
    private static partial Regex Item();

    [GeneratedRegex(
        @"^(?<measure>.+?)(?<! at least| at most| to) (?<value>-?[0-9.]+) ?\S*, limit .+?: ((?<apart>[0-9.]+) \S+ (?<side>left|too "
            + @"much|too low|too little)|(?<side>kept|not kept|must not be reached|not lowered so far|open))$"
    )]
    private static partial Regex Law();

    [GeneratedRegex(
        @"^(?<what>.+?): (at least |at most )?(?<value>-?[0-9.]+) of (?<limit>[0-9.]+) kg, (at least |at most )?(?<apart>[0-9.]+) "
            + @"kg (?<side>left|too much)"
    )]
    private static partial Regex Load();
}

/// <summary>A limit of a law as told.</summary>
internal sealed record ReadLimit(string Mark, string Measure, decimal Value, decimal Apart, string Side);

/// <summary>A limit of a load as told.</summary>
internal sealed record ReadLoad(string Mark, string What, decimal Value, decimal Limit, decimal Apart, string Side);
