package dev.sunthread.web.container;

import dev.sunthread.inbox.OpenFinding;
import dev.sunthread.materials.stock.Balance;
import dev.sunthread.materials.stock.ContainerState;
import dev.sunthread.web.Paged;
import dev.sunthread.web.unit.Told;
import java.util.List;

/**
 * Everything the page of a container shows, at one cut-off.
 *
 * @param lots the numbers of the lots that were filled into it; several make a mix
 */
public record ContainerPage(
        ContainerState state, List<String> lots, List<OpenFinding> findings, Balance balance, Paged<Told> timeline) {}
