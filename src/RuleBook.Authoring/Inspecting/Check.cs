using RuleBook.Reading;

namespace RuleBook.Authoring.Inspecting;

/// <summary>A semantic check.</summary>
/// <param name="Info">What its code means.</param>
/// <param name="Find">Finds what is wrong.</param>
/// <param name="LooksElsewhere">Compares files with one another, and so says nothing true while one of them cannot be read.</param>
internal sealed record Check(CheckInfo Info, Func<Inspected, IEnumerable<Problem>> Find, bool LooksElsewhere = false);
