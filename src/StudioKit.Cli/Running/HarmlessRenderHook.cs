using Spectre.Console;
using Spectre.Console.Rendering;

namespace StudioKit.Cli.Running;

/// <summary>Lets a table's own codes for a terminal pass, and none that hide in its texts.</summary>
internal sealed class HarmlessRenderHook : IRenderHook
{
    public IEnumerable<IRenderable> Process(RenderOptions options, IEnumerable<IRenderable> renderables) => renderables.Select(renderable => new Harmless(renderable));

    private sealed class Harmless(IRenderable inner) : IRenderable
    {
        public Measurement Measure(RenderOptions options, int maxWidth) => inner.Measure(options, maxWidth);

        public IEnumerable<Segment> Render(RenderOptions options, int maxWidth) => inner.Render(options, maxWidth)
            .Select(segment => segment.IsControlCode || segment.IsLineBreak ? segment : new Segment(HarmlessText.Of(segment.Text), segment.Style));
    }
}
