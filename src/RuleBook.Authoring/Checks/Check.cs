using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A semantic check.</summary>
/// <param name="Info">What its code means.</param>
/// <param name="Find">Finds what is wrong.</param>
/// <param name="Leans">On what it leans besides the place that it reports.</param>
internal sealed record Check(CheckInfo Info, Func<Inspected, IEnumerable<Problem>> Find, Leaning Leans = Leaning.OnNothing);

/// <summary>What has to be readable for a check to say something true.</summary>
internal enum Leaning
{
    /// <summary>Only the place that it reports.</summary>
    OnNothing,

    /// <summary>The values of the jurisdiction that it reports.</summary>
    OnValues,

    /// <summary>Every file.</summary>
    OnAllFiles,

    /// <summary>Every file and value.</summary>
    OnAllValues,
}
