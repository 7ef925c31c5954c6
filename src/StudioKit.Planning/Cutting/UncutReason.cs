namespace StudioKit.Planning.Cutting;

/// <summary>Why a piece is not in the plan.</summary>
public enum UncutReason
{
    /// <summary>No stock, however many, is large enough for the piece.</summary>
    TooLarge,

    /// <summary>The stock there is does not suffice for all pieces.</summary>
    NotEnoughStock,
}
