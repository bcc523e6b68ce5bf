using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>registers and registers-note that do not go together.</summary>
internal static class RegistersNote
{
    internal static readonly CheckInfo Info = new(
        "registers-note",
        "it is not said where vehicles are registered instead",
        "A job that names this jurisdiction must be told where to look.",
        "add 'registers-note'; it goes with 'registers: no' only"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        book
            .Book.Jurisdictions.Where(place => place.Registers == place.RegistersNote is not null)
            .Select(place =>
                Info.At(
                    book.Key(place.Mark, place.Registers ? "registers-note" : "registers"),
                    place.Registers
                        ? "vehicles are registered here, yet a note says where else"
                        : "no vehicles are registered here, and no note says where they are"
                )
            );
}
