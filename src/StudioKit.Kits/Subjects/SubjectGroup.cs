namespace StudioKit.Kits.Subjects;

/// <summary>Groups of subjects that are handled alike.</summary>
public enum SubjectGroup
{
    /// <summary>Moths, butterflies, flies, dragonflies.</summary>
    FlyingInsects,

    /// <summary>Beetles, bugs, spiders and other crawlers.</summary>
    CrawlingInsectsAndSpiders,

    /// <summary>Snails and slugs.</summary>
    Snails,

    /// <summary>Frogs, toads, newts.</summary>
    Amphibians,

    /// <summary>Water beetles, water bugs, larvae of dragonflies, small fish, in water from their own pond.</summary>
    WaterAnimals,

    /// <summary>Lizards, snakes.</summary>
    Reptiles,

    /// <summary>Plants and fungi.</summary>
    PlantsAndFungi,

    /// <summary>Scorpions.</summary>
    Scorpions,

    /// <summary>Centipedes and millipedes.</summary>
    CentipedesAndMillipedes,

    /// <summary>Mice, voles, shrews, bats.</summary>
    SmallMammals,

    /// <summary>Shells, feathers, cast skins, fossils, minerals.</summary>
    LifelessThings,
}
