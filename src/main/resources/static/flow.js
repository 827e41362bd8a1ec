// Draws the flow of a trace's answer where a page has room for it; the same numbers stand in the table beside it.
(() => {
  const SHAPES = { certain: "■", possible: "◆", unproven: "◌" };
  const PATTERNS = {
    certain: { symbol: "none" },
    possible: { symbol: "rect", dashArrayX: [1, 0], dashArrayY: [3, 4], rotation: -0.8 },
    unproven: { symbol: "circle", symbolSize: 0.7, dashArrayX: [[6, 6], [0, 6, 6, 0]], dashArrayY: [6, 0] },
  };

  // the content policy lets nobody write a style attribute, as the drawing library does; it allows the same by property
  const setAttribute = SVGElement.prototype.setAttribute;
  SVGElement.prototype.setAttribute = function set(name, value) {
    if (name === "style") {
      this.style.cssText = value;
    } else {
      setAttribute.call(this, name, value);
    }
  };

  const dark = window.matchMedia("(prefers-color-scheme: dark)");

  const token = (name) => getComputedStyle(document.documentElement).getPropertyValue(`--${name}`).trim();

  const number = (count) => new Intl.NumberFormat(document.documentElement.lang).format(count);

  // the words of the table beside it, in the language of the page
  const told = new Map([...document.querySelectorAll("[data-node]")].map((link) => [link.dataset.node, link.textContent]));
  const said = document.querySelector("[data-flow]")?.dataset || {};
  const name = (node) => told.get(node.id) || node.name;

  const words = (node) =>
    node.certainty
      ? `${SHAPES[node.certainty]} ${name(node)}, ${said[node.certainty]}: ${number(node.count)}`
      : `${name(node)}: ${number(node.count)}`;

  const label = (node) =>
    node.certainty
      ? `${SHAPES[node.certainty]} ${name(node)}\n${said[node.certainty]}: ${number(node.count)}`
      : `${name(node)}: ${number(node.count)}`;

  const drawnNode = (node) => {
    const color = token(node.certainty || "thread");
    return {
      name: node.id,
      depth: node.column,
      value: node.count,
      node,
      itemStyle: {
        color,
        borderColor: color,
        borderWidth: 1,
        borderType: node.certainty === "unproven" ? "dashed" : "solid",
        decal: node.certainty ? PATTERNS[node.certainty] : undefined,
      },
    };
  };

  const option = (flow) => {
    const byId = new Map(flow.nodes.map((node) => [node.id, node]));
    return {
      animation: false,
      textStyle: { fontFamily: token("text"), color: token("ink") },
      tooltip: {
        confine: true,
        transitionDuration: 0,
        backgroundColor: token("sheet"),
        borderColor: token("rule-strong"),
        textStyle: { color: token("ink") },
        renderMode: "richText",
        formatter: ({ dataType, data }) =>
          dataType === "node"
            ? words(data.node)
            : `${words(data.from)}\n→ ${words(data.to)}\n${number(data.value)} ${said.goThere}`,
      },
      series: [
        {
          type: "sankey",
          animation: false,
          draggable: false,
          layoutIterations: 64,
          nodeAlign: "left",
          nodeGap: 36,
          nodeWidth: 14,
          left: 8,
          right: 200,
          top: 12,
          bottom: 26,
          emphasis: { focus: "adjacency" },
          label: {
            color: token("ink"),
            fontSize: 12,
            lineHeight: 15,
            width: 195,
            overflow: "break",
            textBorderColor: token("sheet"),
            textBorderWidth: 4,
            formatter: ({ data }) => label(data.node),
          },
          lineStyle: { color: "source", opacity: 0.28, curveness: 0.5 },
          data: flow.nodes.map((node) => drawnNode(node)),
          links: flow.links
            .filter((link) => !link.back)
            .map((link) => ({
              source: link.from.id,
              target: link.to.id,
              value: link.count,
              address: link.address,
              from: byId.get(link.from.id),
              to: byId.get(link.to.id),
            })),
        },
      ],
    };
  };

  // room for the words of every block of the fullest column
  const height = (flow) => {
    const blocks = {};
    for (const node of flow.nodes) {
      blocks[node.column] = (blocks[node.column] || 0) + 1;
    }
    return Math.max(480, 56 * Math.max(...Object.values(blocks)));
  };

  const draw = async (place) => {
    const response = await fetch(place.dataset.flow, { headers: { Accept: "application/json" } });
    if (!response.ok) {
      place.textContent = place.dataset.failed;
      return;
    }
    const flow = await response.json();
    place.style.height = `${height(flow)}px`;
    const chart = window.echarts.init(place, null, { renderer: "svg" });
    chart.setOption(option(flow));
    chart.on("click", ({ dataType, data }) => window.location.assign(dataType === "node" ? data.node.address : data.address));
    dark.addEventListener("change", () => chart.setOption(option(flow), true));
    window.addEventListener("resize", () => chart.resize());
    place.dataset.drawn = "true";
  };

  for (const place of document.querySelectorAll("[data-flow]")) {
    draw(place).catch(() => {
      place.textContent = place.dataset.failed;
    });
  }
})();
