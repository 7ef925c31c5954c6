namespace StudioKit.Kits.Carrying;

/// <summary>When on site a thing is needed; the pack list is in this order.</summary>
public enum PackItemStage
{
    /// <summary>On the way: water, food, clothes, first aid.</summary>
    OnTheWay,

    /// <summary>First on site: frame, panel, flashes.</summary>
    SettingUp,

    /// <summary>While photographing.</summary>
    Shooting,

    /// <summary>When packing down: cloths, disinfectant, bags.</summary>
    PackingDown,
}
