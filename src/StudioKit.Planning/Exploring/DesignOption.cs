using StudioKit.Physics;
using StudioKit.Planning.Changes;

namespace StudioKit.Planning.Exploring;

/// <summary>One way to settle a choice.</summary>
/// <param name="Name">Its name in results.</param>
/// <param name="Settings">What it writes into the kit and takes away; empty where the kit stays as it is.</param>
/// <param name="Price">What it costs beside the shopping list, in the stock's currency.</param>
/// <param name="IsOwn">Whether it comes to the kit as it is written.</param>
public sealed record DesignOption(string Name, ValueList<KitSetting> Settings, decimal Price, bool IsOwn);
