using System.Text.Json;
using System.Text.Json.Serialization;
using RuleBook.Authoring.Files;
using RuleBook.Text;

namespace RuleBook.Cli.Fleets;

/// <summary>How far a run is, noted beside its output so that another can go on after a kill.</summary>
/// <param name="Run">What the run is of: book, day, input and where it writes; another one cannot go on.</param>
/// <param name="Row">The last row that is written.</param>
/// <param name="Output">Bytes of the output until then.</param>
/// <param name="Rejected">Bytes of the rejected rows until then.</param>
/// <param name="Summary">What was counted until then.</param>
/// <param name="Effect">What an earlier book answered otherwise until then; null where none is asked.</param>
/// <param name="Problems">The first rows that could not be read, as they are told.</param>
internal sealed record FleetState(
    string Run,
    long Row,
    long Output,
    long Rejected,
    FleetCounts Summary,
    EffectCount[]? Effect,
    string[] Problems
)
{
    /// <summary>Notes it whole or not at all.</summary>
    public void Write(Destination output) =>
        WholeFile.Write(PathOf(output), JsonSerializer.Serialize(this, FleetStateJson.Default.FleetState));

    /// <summary>What a run that died has noted; null where none has.</summary>
    /// <exception cref="InputException">It was another run.</exception>
    public static FleetState? Read(Destination output, string run)
    {
        var path = PathOf(output);
        if (!File.Exists(path) || Parsed(File.ReadAllText(path)) is not { } noted)
            return null;
        return noted.Run == run
            ? noted
            : throw Refused(
                output.Path,
                "the run that died was of another book, day, input or output",
                "run it without --resume, or with the same book and options"
            );
    }

    /// <summary>Forgets it.</summary>
    public static void Delete(Destination output) => File.Delete(PathOf(output));

    private static FleetState? Parsed(string text)
    {
        try
        {
            return JsonSerializer.Deserialize(text, FleetStateJson.Default.FleetState);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static string PathOf(Destination output) => WrittenAside.Beside(output, "state");

    private static InputException Refused(string output, string what, string tip) =>
        new(Problem.Error("not-resumable", new Mark(output, 1, 1), what, tip));
}

/// <summary>What a summary has counted.</summary>
internal sealed record FleetCounts(
    long Rows,
    long Rejected,
    long Defused,
    Dictionary<string, long> Verdicts,
    Dictionary<string, long> States,
    Dictionary<string, long> Reasons
);

/// <summary>Rows that changed alike.</summary>
internal sealed record EffectCount(string From, string To, long Rows, long First, string State);

/// <summary>How a state is written and read, made when the program is compiled.</summary>
[JsonSerializable(typeof(FleetState))]
internal sealed partial class FleetStateJson : JsonSerializerContext;
