using StudioKit.Kits.Description;
using StudioKit.Kits.Yaml;

namespace StudioKit.Kits.Editing;

/// <summary>One node on the way to a place.</summary>
/// <param name="Node">The node.</param>
/// <param name="Place">Its place among its parent's pairs or entries.</param>
/// <param name="Facts">What its key takes; none at the root and under keys that nobody knows.</param>
/// <param name="Section">The section that it is, or whose list it is; none where it holds single values.</param>
internal sealed record Link(YamlNode Node, int Place, KeyFacts? Facts, ISection? Section);
