namespace StudioKit.Kits.Studio;

/// <summary>A family of liquids that crazes, cracks or clouds a plastic sheet, sooner where it is held bent.</summary>
public enum SheetHarm
{
    /// <summary>Ethanol, methanol, isopropanol, and wipes and hand gels made with them.</summary>
    Alcohol,

    /// <summary>Acetone, thinners, glue removers, petrol and the solvents in insect repellents.</summary>
    Solvents,

    /// <summary>Ammonia, soda, and cleaners and bleaches that are alkaline.</summary>
    Alkalis,
}
