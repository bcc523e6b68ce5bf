using Fractions;

namespace RuleBook.Law;

/// <summary>The GVM within which a vehicle category lies; it counts where a job states none.</summary>
/// <param name="Over">In kg, itself outside; null where there is no lower end.</param>
/// <param name="AtMost">In kg, itself inside; null where there is no upper end.</param>
/// <param name="Assumed">The category has no such bound: a vehicle of it is taken to lie within, as nearly all do.</param>
internal sealed record CategoryGvm(Fraction? Over, Fraction? AtMost, bool Assumed);
