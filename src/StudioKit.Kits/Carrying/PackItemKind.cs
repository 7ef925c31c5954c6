namespace StudioKit.Kits.Carrying;

/// <summary>What a thing carried is for; the pack list keeps the safety ones together and says where one is missing.</summary>
public enum PackItemKind
{
    /// <summary>Anything else.</summary>
    General,

    /// <summary>First aid.</summary>
    FirstAid,

    /// <summary>Rain jackets, warm layers, sun hats.</summary>
    Weather,

    /// <summary>Tools and what mends the studio.</summary>
    Tool,

    /// <summary>Tubs, brushes, cloths and disinfectant.</summary>
    AnimalCare,

    /// <summary>Food and water.</summary>
    Provisions,
}
