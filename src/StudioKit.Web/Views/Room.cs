namespace StudioKit.Web.Views;

/// <summary>What there is to do on the page.</summary>
public enum Room
{
    /// <summary>Say what is carried.</summary>
    Gear,

    /// <summary>Say which animals, how they are lit, and how the day goes.</summary>
    Animals,

    /// <summary>See and move the light.</summary>
    Light,

    /// <summary>Look for what to build: designs that no other beats.</summary>
    Designs,

    /// <summary>See what is carried, and print.</summary>
    CarryAndPrint,

    /// <summary>Stand outdoors with the card for the animal at hand.</summary>
    Field,

    /// <summary>Look at test frames, and learn from them.</summary>
    TestFrames,

    /// <summary>Open, keep and hand on kits.</summary>
    Kits,
}
