namespace StudioKit.Planning.Cautions;

/// <summary>What somebody or something can be hurt by; sheets print them in this order.</summary>
public enum CautionKind
{
    /// <summary>The animal or plant may be protected here.</summary>
    ProtectedHere,

    /// <summary>Stings, where somebody may be allergic.</summary>
    Stings,

    /// <summary>Venom of scorpions, centipedes and snakes.</summary>
    Venom,

    /// <summary>Bites and diseases of mammals.</summary>
    BitesAndDiseases,

    /// <summary>Water on the sheet over a charged flash.</summary>
    WetSheetOverFlash,

    /// <summary>Eyes over or beside a flash that fires up through the sheet.</summary>
    EyesOverLowerFlash,

    /// <summary>Pegs and cords to fall over.</summary>
    TripHazards,

    /// <summary>Others on the same radio channel, who fire one's flashes.</summary>
    SharedChannel,

    /// <summary>Umbrellas, cloths and screens in wind and thunder.</summary>
    BlowsAway,

    /// <summary>An upright sheet that wind takes.</summary>
    SheetInWind,

    /// <summary>Stakes and pegs in ground where something grows, lives or lies.</summary>
    DrivingIntoGround,

    /// <summary>Edges and corners of a sheet at the height of hands and eyes.</summary>
    SheetEdges,

    /// <summary>Nobody near to help.</summary>
    LoneWork,

    /// <summary>A long day in the warm.</summary>
    Heat,

    /// <summary>The sun in a lens, a viewfinder or an eye.</summary>
    Sun,

    /// <summary>Ticks in grass and litter.</summary>
    Ticks,

    /// <summary>What crazes or clouds the sheet when it is cleaned.</summary>
    SheetCleaning,

    /// <summary>Bleach on skin, in eyes, and with other cleaners.</summary>
    Bleach,

    /// <summary>A disinfectant that burns, near a spark.</summary>
    FlammableDisinfectant,
}
