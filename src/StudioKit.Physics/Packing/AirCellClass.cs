namespace StudioKit.Physics.Packing;

/// <summary>How a cell or battery may fly.</summary>
public enum AirCellClass
{
    /// <summary>Not lithium: no energy limit.</summary>
    NoEnergyLimit,

    /// <summary>Lithium within the limit: in the cabin, spares never in checked bags.</summary>
    Cabin,

    /// <summary>Lithium over the limit: two spares at most, with the airline's approval.</summary>
    AskAirline,

    /// <summary>Not allowed for passengers.</summary>
    NotAllowed,
}
