namespace StudioKit.Physics.Packing;

/// <summary>How a load bears on the person under it.</summary>
public enum LoadBand
{
    /// <summary>Up to a fifth of body mass.</summary>
    Comfortable,

    /// <summary>Up to a quarter.</summary>
    Demanding,

    /// <summary>Up to two fifths: leave things at home or share them out.</summary>
    TooHeavy,

    /// <summary>Over two fifths: nobody should carry it.</summary>
    Refused,
}
