using System.Collections.Immutable;
using RuleBook.Units;

namespace RuleBook.Jobs;

/// <summary>A paper that the owner holds already: a certificate, an approval, a plate.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="IssuedIn">Id of the jurisdiction in which it was issued.</param>
/// <param name="Number">Its number; null where none is stated.</param>
/// <param name="Day">When it was issued, as far as that is known; null where it is not stated.</param>
/// <param name="Codes">The modification codes on it.</param>
public sealed record HeldPaper(string Name, string IssuedIn, string? Number, PartialDate? Day, ImmutableArray<string> Codes);
