namespace RuleBook.Physics.Tyres;

/// <summary>What the letters before the width or after the rim code say of the service for which the tyre is made.</summary>
internal enum TyreService
{
    /// <summary>No letter: the European way of marking a passenger-car tyre.</summary>
    Unmarked,

    /// <summary><c>P</c>: passenger car, the United States' way of marking.</summary>
    Passenger,

    /// <summary><c>LT</c>, before the width or after the rim code: light truck.</summary>
    LightTruck,

    /// <summary><c>C</c> after the rim code: commercial (light goods) vehicle.</summary>
    Commercial,

    /// <summary><c>T</c> before the width: temporary-use spare. In-service minimum speed symbols do not apply to it.</summary>
    Temporary,
}
