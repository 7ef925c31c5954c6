using StudioKit.Kits;
using StudioKit.Kits.Tests;

namespace StudioKit.Planning.Tests.Hostile;

/// <summary>Whatever kit the reader takes, the planner plans.</summary>
public sealed class HostilePlansTests
{
    // Every section that a plan reads, and no more framings than one, so that a plan is quick.
    private const string Whole = """
        kit: Reed bed
        camera: {name: body, sensor: 36 mm x 24 mm, pixels: 6000 x 4000, flash-sync: 1/200 s, iso: 100 to 3200, mass: 700 g}
        lenses:
          - name: reed 60
            focal-length: 60 mm
            aperture: f/2.8 to f/32
            largest-magnification: 1:1
            closest-focus: 240 mm
            magnifications: [1:2]
            mass: 300 g
        accessories:
          extension-tubes:
            - {name: tube 25, length: 25 mm}
        flashes:
          - name: low
            guide-number: 30 m @ ISO 100, 35 mm
            zooms:
              - 38 m @ ISO 100, 50 mm
            lowest-power: 1/128
            cell: aa-nimh-2000
            cell-count: 4
          - name: high
            guide-number: 28 m @ ISO 100, 35 mm ± 10 %
        modifiers:
          - name: softbox
            kind: softbox
            size: 200 mm x 150 mm
            transmittance: 0.7
        panel:
          part: opal-acrylic-3
          transmittance: 0.5
        frame:
          kind: table
          height: 500 mm
          pipe: pvc-u-20x1.5
          pegs: {count: 4, hold: 4 kg}
        pack:
          target-mass: 9 kg
          bags:
            - name: sack
              inside: 600 mm x 300 mm x 220 mm
              mass: 1.6 kg
              carrier: me
          people:
            - {name: me, body-mass: 70 kg}
        subjects:
          - name: beetle
            group: crawling-insects-and-spiders
            length: 25 mm
            height: 8 mm
            hold-limit: 5 min
        set-ups:
          - name: white
            kind: white-background
            aperture: f/16
            shutter: 1/125 s
            iso: 400
            camera-pitch: 60°
            lights:
              - flash: low
                role: below
                distance: 45 cm
              - flash: high
                role: above
                modifier: softbox
                distance: 40 cm
          - name: black
            kind: dark-background
            aperture: best
            ambient: EV 9
            lights:
              - flash: high
                role: key
                distance: 35 cm
            ambient-under: 5 stops
            background-distance: 1.5 m
        session:
          setting-up: 20 min
          rounds: 3
        site:
          ambient: EV 12
          wind: Beaufort 3
          slope: 5°
        stock:
          lengths:
            - {length: 3 m, price: 4.40}
        """;

    private static readonly Gen<string> Texts = Gen.OneOf(HostileText.Shuffled(Whole), HostileText.Thinned(Whole), HostileText.Redigited(Whole));

    // One session for all of them, as its results are those of fresh plans, which other tests hold: only what a damage touches is planned anew.
    [Fact]
    public void Any_kit_that_can_be_read_can_be_planned()
    {
        var session = new PlanSession();
        Texts.Sample(text =>
        {
            var read = KitReader.Parse(text, "kit.yaml", PartsLibrary.Embedded);
            if (!read.HasErrors)
            {
                session.Plan(read).Checks.Should().NotBeEmpty(text);
            }
        }, iter: RandomFiles.Runs, threads: 1);
    }

    [Fact]
    public void The_kit_that_is_damaged_is_sound_itself() =>
        KitReader.Parse(Whole, "kit.yaml", PartsLibrary.Embedded).Diagnostics.Should().BeEmpty();
}
